-- Names of taxa that the house brought in beside those of the program; a synonym points to its
-- accepted name.

create table house_taxon (
  name varchar(400) not null primary key,
  author varchar(400) not null,
  rank varchar(100) not null,
  parent varchar(400),
  accepted_as varchar(400),
  common_name varchar(400) not null,
  source varchar(1000) not null
);
