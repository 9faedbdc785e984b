-- What lies open on a bench, and the calipers of the room.

create table draft (
  bench varchar(200) not null primary key,
  bone_id varchar(200) not null,
  element varchar(100) not null,
  code varchar(100) not null,
  pass integer not null,
  half_typed text not null
);

create table caliper_card (
  name varchar(200) not null primary key,
  serial varchar(200) not null,
  unit varchar(40) not null,
  decimal_mark varchar(1) not null,
  fewest_decimals integer not null,
  decimals integer not null,
  line_end varchar(40) not null,
  resolution_mm double precision not null,
  reach_mm double precision,
  last_check varchar(40)
);
