-- Pictures of bones and animals; the files lie beside the collection, named by their hash.

create table photo (
  id bigint not null primary key,
  subject_kind varchar(40) not null,
  subject_id varchar(200) not null,
  hash varchar(64) not null,
  form varchar(40) not null,
  width integer not null,
  height integer not null,
  name text not null,
  person_id varchar(200),
  at varchar(40) not null
);

create index photo_by_subject on photo (subject_kind, subject_id, id);
