-- Lines of legacy lists, kept as found, and what people decided about them.

create table old_card (
  number bigint not null primary key,
  source varchar(400) not null,
  source_row bigint not null,
  card_text text not null
);

create table old_card_decision (
  number bigint not null primary key,
  card_number bigint not null references old_card (number),
  kind varchar(40) not null,
  person_id varchar(200) not null references person (id),
  at varchar(40) not null,
  note text not null
);
