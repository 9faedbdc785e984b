-- Bone numbers by rule, bones in pieces, bones found together, and what a bench is about.

create table number_rule (
  tray_id varchar(200) not null primary key references tray (id),
  rule varchar(400) not null
);

-- Numbers that were given: none comes again.
create table number_given (
  series varchar(400) not null,
  number bigint not null,
  bone_id varchar(200) not null,
  primary key (series, number)
);

create table association_bone (
  bone_id varchar(200) not null primary key references tray_bone (id),
  association bigint not null
);

create index association_bone_by_association on association_bone (association, bone_id);

create table refit (
  bone_id varchar(200) not null primary key references tray_bone (id),
  pieces varchar(400) not null,
  across_break varchar(2000) not null
);

create table keying_batch (
  bench varchar(200) not null primary key,
  tray_id varchar(200) not null references tray (id),
  element varchar(100) not null,
  side varchar(40) not null,
  portion varchar(40) not null,
  left_over integer not null
);

create table keying_pair (
  bench varchar(200) not null primary key,
  left_bone varchar(200) not null references tray_bone (id),
  right_bone varchar(200) not null references tray_bone (id)
);
