-- Everything in one field: search_text holds one row for each row of the record that can be found,
-- search_index its words, and for each part of the record a view search_of_… says which they are.
-- Triggers say what is due; it is taken in when the change that made it due is done.
--
-- part: the table it was made from, as one word. renewed_by: the key whose change makes it anew.
-- opens, hit_key: what a person is led to. who: the id of the person named, in hexadecimal, so
-- that it is one word nobody types by chance. Names of people are not copied: a blanked name
-- is gone at once.

create table search_text (
  id integer primary key,
  part varchar(40) not null,
  renewed_by not null,
  opens varchar(40) not null,
  hit_key varchar(400) not null,
  who varchar(400) not null,
  content text not null
);

create index search_text_renewed_by on search_text (part, renewed_by);

-- What changed and has to be made anew: once, when the whole change is done.
create table search_due (
  part varchar(40) not null,
  renewed_by not null,
  primary key (part, renewed_by)
) without rowid;

create virtual table search_index using fts5 (
  content,
  who,
  part,
  content = 'search_text',
  content_rowid = 'id',
  tokenize = 'unicode61 remove_diacritics 2',
  prefix = '2 3',
  columnsize = 0
);

create view search_of_traybone as
  select
    'traybone' as part,
    b.id as renewed_by,
    'BONE' as opens,
    b.id as hit_key,
    '' as who,
    concat_ws(' · ',
      b.id,
      replace(lower(b.side), '_', ' ') || ' ' || b.element || ', ' || lower(b.portion),
      t.name,
      t.lot,
      nullif(lower(replace(b.flags, '|', ' ')), ''),
      b.animal_id,
      nullif(b.remarks, ''),
      nullif(b.goes_to, ''),
      'in pieces: ' || lower(replace(r.pieces, '|', ', ')),
      iif(b.standing = 'STOPPED', 'may be human', null)) as content
  from tray_bone b
    join tray t on t.id = b.tray_id
    left join refit r on r.bone_id = b.id;

create view search_of_bonecall as
  select
    'bonecall' as part,
    c.id as renewed_by,
    'BONE' as opens,
    c.bone_id as hit_key,
    hex(c.person_id) as who,
    concat_ws(' · ',
      c.bone_id,
      replace(lower(b.side), '_', ' ') || ' ' || b.element,
      c.as_written,
      c.taxon || iif(c.qualifier = 'NONE', '', ' ' || lower(c.qualifier)),
      replace(lower(c.standing), '_', ' '),
      nullif(c.basis, ''),
      c.why,
      'compared with ' || replace(c.compared_with, '|', ', '),
      substr(c.at, 1, 10)) as content
  from bone_call c
    left join tray_bone b on b.id = c.bone_id;

create view search_of_elementcall as
  select
    'elementcall' as part,
    c.id as renewed_by,
    'BONE' as opens,
    c.bone_id as hit_key,
    hex(c.person_id) as who,
    concat_ws(' · ',
      c.bone_id,
      'said to be ' || replace(lower(c.side), '_', ' ') || ' ' || c.element,
      lower(c.portion),
      iif(c.look is null, null, 'second look'),
      nullif(c.basis, ''),
      substr(c.at, 1, 10)) as content
  from element_call c;

create view search_of_reading as
  select
    'reading' as part,
    r.id as renewed_by,
    iif(s.id is null, 'BONE', 'ANIMAL') as opens,
    coalesce(s.animal_id, r.bone_id) as hit_key,
    hex(r.person_id) as who,
    concat_ws(' · ',
      s.animal_id,
      r.bone_id,
      replace(lower(coalesce(b.side, s.side)), '_', ' ') || ' ' || r.element || ' '
        || r.code || ' ' || r.as_typed,
      iif(instr(r.as_typed, r.length_mm) > 0, null, r.length_mm || ' mm'),
      iif(r.kind = 'TAKE', null, replace(lower(r.kind), '_', ' ')),
      nullif(r.reason, ''),
      r.instrument,
      substr(r.at, 1, 10)) as content
  from reading r
    left join tray_bone b on b.id = r.bone_id
    left join skeleton_bone s on s.id = r.bone_id;

create view search_of_stoprecord as
  select
    'stoprecord' as part,
    s.id as renewed_by,
    'BONE' as opens,
    s.bone_id as hit_key,
    hex(s.person_id) as who,
    concat_ws(' · ',
      s.bone_id,
      replace(lower(s.kind), '_', ' '),
      nullif(s.reason, ''),
      substr(s.at, 1, 10)) as content
  from stop_record s;

create view search_of_associationbone as
  select
    'associationbone' as part,
    a.bone_id as renewed_by,
    'BONE' as opens,
    a.bone_id as hit_key,
    '' as who,
    a.bone_id || ' · found together with ' || coalesce(
      (select group_concat(o.bone_id, ', ') from association_bone o
        where o.association = a.association and o.bone_id <> a.bone_id), '') as content
  from association_bone a;

create view search_of_scrap as
  select
    'scrap' as part,
    s.id as renewed_by,
    'TRAY' as opens,
    s.tray_id as hit_key,
    hex(s.person_id) as who,
    concat_ws(' · ',
      s.tray_id,
      s.pieces || ' pieces of scrap',
      s.mass_g || ' g',
      nullif(s.remarks, ''),
      substr(s.at, 1, 10)) as content
  from scrap s;

create view search_of_tray as
  select
    'tray' as part,
    t.id as renewed_by,
    'TRAY' as opens,
    t.id as hit_key,
    hex(coalesce(t.assigned_to, '')) as who,
    concat_ws(' · ',
      t.name,
      iif(t.name = t.id, null, t.id),
      'lot ' || t.lot,
      nullif(t.provenance, ''),
      nullif(t.hazards, ''),
      nullif(t.priority_reason, ''),
      nullif(t.requested_by, ''),
      replace(lower(t.state), '_', ' '),
      replace(lower(t.age), '_', ' ')) as content
  from tray t;

create view search_of_lot as
  select
    'lot' as part,
    l.id as renewed_by,
    'LOT' as opens,
    l.id as hit_key,
    '' as who,
    concat_ws(' · ',
      l.id,
      nullif(l.remarks, ''),
      'places ' || replace(lower(l.places), '_', ' ')) as content
  from lot l;

create view search_of_animal as
  select
    'animal' as part,
    a.id as renewed_by,
    'ANIMAL' as opens,
    a.id as hit_key,
    '' as who,
    concat_ws(' · ',
      a.id,
      a.taxon,
      nullif(trim(a.sex || ' ' || a.age_class || ' ' || a.origin), ''),
      a.drawer,
      replace(lower(a.source), '_', ' '),
      nullif(lower(replace(a.flags, '|', ' ')), ''),
      nullif(a.remarks, ''),
      'body length ' || a.body_length_mm || ' mm',
      'body mass ' || a.body_mass_g || ' g',
      nullif(g.source_name, ''),
      nullif(g.length_how, ''),
      nullif(g.mass_how, ''),
      nullif(g.permit, ''),
      nullif(g.permit_words, ''),
      'hand over by ' || g.hand_over_by,
      case g.standing
        when 'MERGED' then 'merged into ' || g.merged_into
        when 'RETIRED' then 'retired'
      end) as content
  from animal a
    left join animal_register g on g.animal_id = a.id;

create view search_of_shelfreading as
  select
    'shelfreading' as part,
    r.animal_id as renewed_by,
    'ANIMAL' as opens,
    r.animal_id as hit_key,
    '' as who,
    concat_ws(' · ',
      r.animal_id,
      a.taxon,
      replace(lower(b.side), '_', ' ') || ' ' || b.element || ' '
        || r.code || ' ' || r.reading_value,
      iif(r.origin like 'register,%', r.origin, null)) as content
  from shelf_reading r
    join shelf_bone b on b.animal_id = r.animal_id and b.position = r.position
    join animal a on a.id = r.animal_id;

create view search_of_shelfcorrection as
  select
    'shelfcorrection' as part,
    r.animal_id as renewed_by,
    'ANIMAL' as opens,
    r.animal_id as hit_key,
    '' as who,
    concat_ws(' · ',
      r.animal_id,
      a.taxon,
      replace(lower(b.side), '_', ' ') || ' ' || b.element || ' ' || r.code
        || coalesce(' corrected to ' || r.reading_value, ' withdrawn'),
      nullif(r.origin, '')) as content
  from shelf_correction r
    join shelf_bone b on b.animal_id = r.animal_id and b.position = r.position
    join animal a on a.id = r.animal_id;

create view search_of_acceptedfinding as
  select
    'acceptedfinding' as part,
    f.number as renewed_by,
    iif(f.animal is null, 'NOTHING', 'ANIMAL') as opens,
    coalesce(f.animal, '') as hit_key,
    '' as who,
    concat_ws(' · ',
      f.animal,
      f.bone,
      f.place,
      'accepted: ' || replace(lower(f.kind), '_', ' '),
      nullif(f.reason, ''),
      substr(f.at, 1, 10)) as content
  from accepted_finding f;

create view search_of_housetaxon as
  select
    'housetaxon' as part,
    x.name as renewed_by,
    'TAXON' as opens,
    x.name as hit_key,
    '' as who,
    concat_ws(' · ',
      x.name,
      nullif(x.author, ''),
      nullif(x.rank, ''),
      nullif(x.common_name, ''),
      'accepted as ' || x.accepted_as,
      nullif(x.source, '')) as content
  from house_taxon x;

create view search_of_person as
  select
    'person' as part,
    p.id as renewed_by,
    'PERSON' as opens,
    p.id as hit_key,
    hex(p.id) as who,
    coalesce(p.name, '') as content
  from person p;

create view search_of_oldcard as
  select
    'oldcard' as part,
    c.number as renewed_by,
    'OLD_CARD' as opens,
    c.number as hit_key,
    '' as who,
    concat_ws(' · ',
      c.card_text,
      c.source || ', row ' || c.source_row) as content
  from old_card c;

create view search_of_oldcarddecision as
  select
    'oldcarddecision' as part,
    d.number as renewed_by,
    'OLD_CARD' as opens,
    d.card_number as hit_key,
    hex(d.person_id) as who,
    concat_ws(' · ',
      'card ' || d.card_number,
      replace(lower(d.kind), '_', ' '),
      nullif(d.note, ''),
      substr(d.at, 1, 10)) as content
  from old_card_decision d;

create view search_of_arrival as
  select
    'arrival' as part,
    a.number as renewed_by,
    'ARRIVAL' as opens,
    a.number as hit_key,
    '' as who,
    concat_ws(' · ',
      a.number,
      nullif(a.taxon, ''),
      nullif(a.what, ''),
      nullif(a.came_in, ''),
      nullif(a.came_from, ''),
      replace(lower(a.stage), '_', ' '),
      nullif(a.place, ''),
      nullif(a.permit, ''),
      nullif(a.remarks, '')) as content
  from arrival a;

create view search_of_arrivalinterest as
  select
    'arrivalinterest' as part,
    i.number as renewed_by,
    'ARRIVAL' as opens,
    i.arrival as hit_key,
    hex(i.person_id) as who,
    concat_ws(' · ',
      i.arrival,
      'wanted: ' || i.reason,
      substr(i.at, 1, 10)) as content
  from arrival_interest i;

create view search_of_photo as
  select
    'photo' as part,
    p.id as renewed_by,
    upper(p.subject_kind) as opens,
    p.subject_id as hit_key,
    hex(coalesce(p.person_id, '')) as who,
    concat_ws(' · ',
      p.subject_id,
      nullif(p.name, ''),
      substr(p.at, 1, 10)) as content
  from photo p;
