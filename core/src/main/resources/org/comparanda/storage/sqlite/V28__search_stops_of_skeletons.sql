-- A stop of a skeleton's bone opens its animal, as its readings do.

drop view search_of_stoprecord;

create view search_of_stoprecord as
  select
    'stoprecord' as part,
    s.id as renewed_by,
    iif(b.id is null, 'BONE', 'ANIMAL') as opens,
    coalesce(b.animal_id, s.bone_id) as hit_key,
    hex(s.person_id) as who,
    concat_ws(' · ',
      s.bone_id,
      replace(lower(s.kind), '_', ' '),
      nullif(s.reason, ''),
      substr(s.at, 1, 10)) as content
  from stop_record s
    left join skeleton_bone b on b.id = s.bone_id;

create trigger search_stop_of_skeleton_moved after update of animal_id on skeleton_bone
when old.animal_id <> new.animal_id
begin
  insert into search_due select 'stoprecord', id from stop_record where bone_id = new.id;
end;
