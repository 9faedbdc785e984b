-- What changed, by whom at which bench: one chain of hashes per bench, and one that joins them.

create table day_book (
  bench varchar(200) not null,
  number bigint not null,
  at varchar(40) not null,
  subject varchar(400) not null,
  content text not null,
  previous varchar(64) not null,
  hash varchar(64) not null,
  primary key (bench, number)
);
