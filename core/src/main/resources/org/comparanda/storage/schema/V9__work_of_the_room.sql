-- The room's work. New columns may be empty, so that no row of an older form changes.

-- Which places may leave the house; a lot that isn't here holds them back.
create table lot (
  id varchar(400) not null primary key,
  places varchar(40) not null,
  remarks text not null
);

alter table tray add column priority integer;
alter table tray add column priority_reason text;
alter table tray add column requested_by varchar(400);
alter table tray add column assigned_to varchar(200);

-- Where a bone goes next, and whether it stays in the house.
alter table tray_bone add column goes_to text;
alter table tray_bone add column restricted integer;

-- What a call rests on, and what it is.
alter table bone_call add column as_written text;
alter table bone_call add column grounds varchar(40);
alter table bone_call add column compared_with text;
alter table bone_call add column why text;
alter table bone_call add column traits text;
alter table bone_call add column standing varchar(40);
alter table bone_call add column answers bigint;

-- What the numbers said when a call was made; wiped when the bone may be human.
create table beside_call (
  call_id bigint not null primary key references bone_call (id),
  bone_id varchar(200) not null,
  named text not null,
  ruled_out text not null,
  typicality double precision
);

-- Which element, side and portion a person says it is. Rows are only ever added.
create table element_call (
  id bigint not null primary key,
  bone_id varchar(200) not null,
  element varchar(100) not null,
  side varchar(40) not null,
  portion varchar(40) not null,
  person_id varchar(200) not null references person (id),
  at varchar(40) not null,
  basis text not null
);

create index element_call_by_bone on element_call (bone_id, id);

-- Pieces that nobody will name, counted and weighed. Rows are only ever added.
create table scrap (
  id bigint not null primary key,
  tray_id varchar(200) not null references tray (id),
  pieces bigint not null,
  mass_g double precision,
  person_id varchar(200) not null references person (id),
  at varchar(40) not null,
  remarks text not null
);

-- A bone set aside as possibly human, or opened again. Rows are only ever added.
create table stop_record (
  id bigint not null primary key,
  bone_id varchar(200) not null,
  kind varchar(40) not null,
  person_id varchar(200) not null references person (id),
  at varchar(40) not null,
  reason text not null
);

-- Who may do what, given or withdrawn by whom. Rows are only ever added.
create table right_given (
  id bigint not null primary key,
  person_id varchar(200) not null references person (id),
  what varchar(40) not null,
  kind varchar(40) not null,
  by_id varchar(200) not null references person (id),
  at varchar(40) not null,
  reason text not null
);

-- Rules of the house; the latest row of a name holds. Rows are only ever added.
create table house_rule (
  id bigint not null primary key,
  name varchar(100) not null,
  content text not null,
  person_id varchar(200) not null references person (id),
  at varchar(40) not null
);

-- What the Second Look decided on a bone's first call, once and for all.
create table second_look_draw (
  position bigint not null primary key,
  call_id bigint not null,
  bone_id varchar(200) not null,
  why varchar(40),
  by_rule varchar(400) not null
);
