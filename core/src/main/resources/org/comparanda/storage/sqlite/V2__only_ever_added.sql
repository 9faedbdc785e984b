-- Readings and calls are only ever added: a change or a removal is refused by the file itself.

create trigger shelf_reading_never_changed before update on shelf_reading
begin
  select raise(abort, 'A reading is never changed: add a new row instead.');
end;

create trigger shelf_reading_never_removed before delete on shelf_reading
begin
  select raise(abort, 'A reading is never removed: add a new row instead.');
end;

create trigger reading_never_changed before update on reading
begin
  select raise(abort, 'A reading is never changed: add a new row instead.');
end;

create trigger reading_never_removed before delete on reading
begin
  select raise(abort, 'A reading is never removed: add a new row instead.');
end;

create trigger bone_call_never_changed before update on bone_call
begin
  select raise(abort, 'A call is never changed: add a new row instead.');
end;

create trigger bone_call_never_removed before delete on bone_call
begin
  select raise(abort, 'A call is never removed: add a new row instead.');
end;

create trigger shelf_change_never_changed before update on shelf_change
begin
  select raise(abort, 'A change of the shelf is never changed: add a new row instead.');
end;

create trigger shelf_change_never_removed before delete on shelf_change
begin
  select raise(abort, 'A change of the shelf is never removed: add a new row instead.');
end;
