-- Readings of a bone of a skeleton are found under the animal that it belongs to now, and as the
-- bone that it is now.

create trigger search_skeleton_bone_changed
after update of animal_id, element, side on skeleton_bone
when old.animal_id <> new.animal_id or old.element <> new.element or old.side <> new.side
begin
  insert into search_due select 'reading', id from reading where bone_id = new.id;
end;
