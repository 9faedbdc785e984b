-- The second look that a word on the element belongs to; such a word stands beside and replaces
-- nothing.
alter table element_call add column look bigint;
