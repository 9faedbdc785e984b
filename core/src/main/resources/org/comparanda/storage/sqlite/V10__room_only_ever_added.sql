-- The rows of the room are only ever added: a change or a removal is refused by the file itself.

create trigger element_call_never_changed before update on element_call
begin
  select raise(abort, 'A call is never changed: add a new row instead.');
end;

create trigger element_call_never_removed before delete on element_call
begin
  select raise(abort, 'A call is never removed: add a new row instead.');
end;

create trigger scrap_never_changed before update on scrap
begin
  select raise(abort, 'A count of scrap is never changed: add a new row instead.');
end;

create trigger scrap_never_removed before delete on scrap
begin
  select raise(abort, 'A count of scrap is never removed: add a new row instead.');
end;

create trigger stop_record_never_changed before update on stop_record
begin
  select raise(abort, 'A stop is never changed: add a new row instead.');
end;

create trigger stop_record_never_removed before delete on stop_record
begin
  select raise(abort, 'A stop is never removed: add a new row instead.');
end;

create trigger right_given_never_changed before update on right_given
begin
  select raise(abort, 'A right that was given is never changed: add a new row instead.');
end;

create trigger right_given_never_removed before delete on right_given
begin
  select raise(abort, 'A right that was given is never removed: add a new row instead.');
end;

create trigger house_rule_never_changed before update on house_rule
begin
  select raise(abort, 'A rule is never changed: add a new row instead.');
end;

create trigger house_rule_never_removed before delete on house_rule
begin
  select raise(abort, 'A rule is never removed: add a new row instead.');
end;

create trigger second_look_draw_never_changed before update on second_look_draw
begin
  select raise(abort, 'A draw is never changed: add a new row instead.');
end;

create trigger second_look_draw_never_removed before delete on second_look_draw
begin
  select raise(abort, 'A draw is never removed: add a new row instead.');
end;
