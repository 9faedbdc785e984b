-- A kept answer is never changed; STOP alone removes those of its bone.

create trigger kept_answer_never_changed before update on kept_answer
begin
  select raise(abort, 'A kept answer is never changed: add a new row instead.');
end;
