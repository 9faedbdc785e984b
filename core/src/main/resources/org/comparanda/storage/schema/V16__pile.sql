-- What came in to become a comparative skeleton, and the research that waits for it.

create table arrival (
  number varchar(200) not null primary key,
  taxon varchar(400) not null,
  what varchar(400) not null,
  came_in varchar(10) not null,
  came_from text not null,
  stage varchar(40) not null,
  place varchar(400) not null,
  permit varchar(400) not null,
  remarks text not null
);

create table arrival_interest (
  number bigint not null primary key,
  arrival varchar(200) not null references arrival (number),
  person_id varchar(200) not null references person (id),
  reason text not null,
  at varchar(40) not null
);
