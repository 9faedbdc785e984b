-- A number once given is never given again.

create trigger number_given_never_changed before update on number_given
begin
  select raise(abort, 'A number that was given is never changed.');
end;

create trigger number_given_never_removed before delete on number_given
begin
  select raise(abort, 'A number that was given is never removed.');
end;
