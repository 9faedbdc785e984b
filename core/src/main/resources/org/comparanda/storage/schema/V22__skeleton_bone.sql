-- Bones of comparative skeletons as they are measured on the Shelf: what was said of each before
-- its readings. The number stays when a bone is moved to another element or side.

create table skeleton_bone (
  id varchar(200) not null primary key,
  animal_id varchar(200) not null references animal (id),
  element varchar(100) not null,
  side varchar(40) not null,
  portion varchar(40) not null,
  proximal varchar(40) not null,
  distal varchar(40) not null,
  flags varchar(400) not null
);

create index skeleton_bone_by_animal on skeleton_bone (animal_id, id);
