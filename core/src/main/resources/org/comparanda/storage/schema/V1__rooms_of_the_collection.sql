-- Tables of a collection. Lengths are in mm, masses in g, times are ISO 8601 in UTC, lists of
-- flags are words joined by '|'. Running numbers are given by the program.

create table person (
  id varchar(200) not null primary key,
  name varchar(400) not null
);

create table animal (
  id varchar(200) not null primary key,
  taxon varchar(400),
  source varchar(40) not null,
  drawer varchar(400),
  sex varchar(40) not null,
  age_class varchar(100) not null,
  origin varchar(100) not null,
  body_length_mm double precision,
  body_mass_g double precision,
  flags varchar(400) not null,
  remarks text not null
);

create index animal_by_taxon on animal (taxon);

create table shelf_bone (
  animal_id varchar(200) not null references animal (id),
  position integer not null,
  element varchar(100) not null,
  side varchar(40) not null,
  portion varchar(40) not null,
  flags varchar(400) not null,
  primary key (animal_id, position)
);

-- One value of one measurement of a shelf bone, and where it came from.
create table shelf_reading (
  animal_id varchar(200) not null,
  position integer not null,
  code varchar(100) not null,
  reading_value double precision not null,
  origin text not null,
  primary key (animal_id, position, code),
  foreign key (animal_id, position) references shelf_bone (animal_id, position)
);

-- Every change of the shelf: its number is the version of the shelf.
create table shelf_change (
  version bigint not null primary key,
  at varchar(40) not null,
  animals bigint not null,
  origin text not null
);

create table tray (
  id varchar(200) not null primary key,
  position bigint not null,
  lot varchar(400) not null,
  name varchar(400) not null,
  age varchar(40) not null,
  provenance text not null,
  hazards text not null,
  state varchar(40) not null
);

create table tray_bone (
  id varchar(200) not null primary key,
  position bigint not null,
  tray_id varchar(200) not null references tray (id),
  animal_id varchar(200),
  element varchar(100) not null,
  side varchar(40) not null,
  portion varchar(40) not null,
  proximal varchar(40) not null,
  distal varchar(40) not null,
  flags varchar(400) not null,
  standing varchar(40) not null,
  remarks text not null
);

create index tray_bone_by_tray on tray_bone (tray_id, position);

-- One caliper value as typed. Rows are only ever added.
create table reading (
  id bigint not null primary key,
  bone_id varchar(200) not null,
  element varchar(100) not null,
  code varchar(100) not null,
  kind varchar(40) not null,
  as_typed text not null,
  length_mm double precision,
  person_id varchar(200) not null references person (id),
  at varchar(40) not null,
  pass integer not null,
  is_repeat integer not null,
  instrument varchar(400),
  points_at bigint references reading (id),
  reason text not null
);

create index reading_by_bone on reading (bone_id, id);

-- A person's determination. Rows are only ever added.
create table bone_call (
  id bigint not null primary key,
  bone_id varchar(200) not null,
  taxon varchar(400) not null,
  qualifier varchar(40) not null,
  person_id varchar(200) not null references person (id),
  at varchar(40) not null,
  basis text not null,
  saw_suggestion integer not null
);

create index bone_call_by_bone on bone_call (bone_id, id);
