-- The search finds what is recorded of a lot.
drop view search_of_lot;

create view search_of_lot as
  select
    'lot' as part,
    l.id as renewed_by,
    'LOT' as opens,
    l.id as hit_key,
    '' as who,
    concat_ws(' · ',
      l.id,
      nullif(l.provenance, ''),
      nullif(l.hazards, ''),
      nullif(l.remarks, ''),
      'places ' || replace(lower(l.places), '_', ' ')) as content
  from lot l;
