-- What the numbers said of a bone, whole, to be reckoned again; wiped when the bone may be human.

create table kept_answer (
  id bigint not null primary key,
  bone_id varchar(200) not null,
  at varchar(40) not null,
  call_id bigint,
  program varchar(200) not null,
  shelf_version varchar(64) not null,
  content text not null
);

create index kept_answer_by_bone on kept_answer (bone_id, id);

-- Why a rule of the house was set as it was.
alter table house_rule add column why text;
