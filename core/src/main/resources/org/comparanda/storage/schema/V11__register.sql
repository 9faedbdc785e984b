-- What the register holds of an animal beside the table animal. An animal without a row here stands
-- on the shelf and nothing more is known of it.

create table animal_register (
  animal_id varchar(200) not null primary key references animal (id),
  source_name varchar(400) not null,
  length_on varchar(10),
  length_how varchar(400) not null,
  length_kind varchar(40) not null,
  mass_on varchar(10),
  mass_how varchar(400) not null,
  mass_kind varchar(40) not null,
  permit varchar(400) not null,
  permit_words text not null,
  export varchar(40) not null,
  hand_over_by varchar(10),
  standing varchar(40) not null,
  merged_into varchar(200) references animal (id)
);

-- A later value of a shelf reading; the latest counts, one without a value withdraws the reading.
-- Rows are only ever added.
create table shelf_correction (
  number bigint not null primary key,
  animal_id varchar(200) not null,
  position integer not null,
  code varchar(100) not null,
  reading_value double precision,
  origin text not null,
  foreign key (animal_id, position, code)
    references shelf_reading (animal_id, position, code)
);

create index day_book_by_subject on day_book (subject);
