-- Corrections of the shelf are only ever added; an animal never goes.

create trigger shelf_correction_never_changed before update on shelf_correction
begin
  select raise(abort, 'A correction is never changed: add a new row instead.');
end;

create trigger shelf_correction_never_removed before delete on shelf_correction
begin
  select raise(abort, 'A correction is never removed: add a new row instead.');
end;

create trigger animal_never_removed before delete on animal
begin
  select raise(abort, 'An animal is never removed: retire it instead.');
end;
