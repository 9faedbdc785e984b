-- How one kind of table is read, under a name; and which tables were imported, by their content.

create table table_mapping (
  name varchar(200) not null primary key,
  content text not null
);

create table imported_table (
  content varchar(64) not null primary key,
  file_name varchar(400) not null,
  at varchar(40) not null,
  animals bigint not null
);
