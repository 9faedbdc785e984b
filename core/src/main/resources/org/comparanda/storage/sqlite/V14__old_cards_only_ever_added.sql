-- Old cards and the decisions about them are only ever added.

create trigger old_card_never_changed before update on old_card
begin
  select raise(abort, 'An old card stays as found.');
end;

create trigger old_card_never_removed before delete on old_card
begin
  select raise(abort, 'An old card stays as found.');
end;

create trigger old_card_decision_never_changed before update on old_card_decision
begin
  select raise(abort, 'A decision is never changed: add a new one instead.');
end;

create trigger old_card_decision_never_removed before delete on old_card_decision
begin
  select raise(abort, 'A decision is never removed: add a new one instead.');
end;
