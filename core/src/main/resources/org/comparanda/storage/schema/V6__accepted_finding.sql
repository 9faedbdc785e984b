-- Findings of the integrity list that a keeper accepts with a reason.

create table accepted_finding (
  number bigint not null primary key,
  kind varchar(40) not null,
  animal varchar(200),
  bone varchar(200),
  place varchar(200),
  content varchar(2000),
  reason varchar(2000) not null,
  at varchar(40) not null
);
