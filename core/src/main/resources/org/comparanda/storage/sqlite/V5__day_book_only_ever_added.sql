-- The Day Book is only ever added to.

create trigger day_book_never_changed before update on day_book
begin
  select raise(abort, 'An entry of the Day Book is never changed: add a new row instead.');
end;

create trigger day_book_never_removed before delete on day_book
begin
  select raise(abort, 'An entry of the Day Book is never removed: add a new row instead.');
end;
