-- Keeps search_text true: what is added or changed is due, and so are the rows whose words name it.

create trigger search_text_added after insert on search_text
begin
  insert into search_index (rowid, content, who, part)
    values (new.id, new.content, new.who, new.part);
end;

create trigger search_text_removed after delete on search_text
begin
  insert into search_index (search_index, rowid, content, who, part)
    values ('delete', old.id, old.content, old.who, old.part);
end;

-- Bones on trays, and what is said of them.

create trigger search_tray_bone_added after insert on tray_bone
begin
  insert into search_due values ('traybone', new.id)
    on conflict do nothing;
  insert into search_due select 'bonecall', id from bone_call where bone_id = new.id
    on conflict do nothing;
  insert into search_due select 'reading', id from reading where bone_id = new.id
    on conflict do nothing;
end;

create trigger search_tray_bone_changed after update on tray_bone
begin
  insert into search_due values ('traybone', new.id)
    on conflict do nothing;
end;

create trigger search_tray_bone_renamed after update of element, side on tray_bone
when old.element <> new.element or old.side <> new.side
begin
  insert into search_due select 'bonecall', id from bone_call where bone_id = new.id
    on conflict do nothing;
  insert into search_due select 'reading', id from reading where bone_id = new.id
    on conflict do nothing;
end;

create trigger search_refit_added after insert on refit
begin
  insert into search_due values ('traybone', new.bone_id)
    on conflict do nothing;
end;

create trigger search_refit_changed after update on refit
begin
  insert into search_due values ('traybone', new.bone_id)
    on conflict do nothing;
end;

create trigger search_refit_removed after delete on refit
begin
  insert into search_due values ('traybone', old.bone_id)
    on conflict do nothing;
end;

create trigger search_association_bone_added after insert on association_bone
begin
  insert into search_due values ('associationbone', new.bone_id)
    on conflict do nothing;
  insert into search_due select 'associationbone', bone_id from association_bone
    where association = new.association
    on conflict do nothing;
end;

create trigger search_association_bone_changed after update on association_bone
begin
  insert into search_due values ('associationbone', new.bone_id)
    on conflict do nothing;
  insert into search_due select 'associationbone', bone_id from association_bone
    where association = old.association
    on conflict do nothing;
  insert into search_due select 'associationbone', bone_id from association_bone
    where association = new.association
    on conflict do nothing;
end;

create trigger search_association_bone_removed after delete on association_bone
begin
  insert into search_due values ('associationbone', old.bone_id)
    on conflict do nothing;
  insert into search_due select 'associationbone', bone_id from association_bone
    where association = old.association
    on conflict do nothing;
end;

create trigger search_bone_call_added after insert on bone_call
begin
  insert into search_due values ('bonecall', new.id)
    on conflict do nothing;
end;

create trigger search_element_call_added after insert on element_call
begin
  insert into search_due values ('elementcall', new.id)
    on conflict do nothing;
end;

create trigger search_reading_added after insert on reading
begin
  insert into search_due values ('reading', new.id)
    on conflict do nothing;
end;

create trigger search_stop_record_added after insert on stop_record
begin
  insert into search_due values ('stoprecord', new.id)
    on conflict do nothing;
end;

create trigger search_scrap_added after insert on scrap
begin
  insert into search_due values ('scrap', new.id)
    on conflict do nothing;
end;

-- Trays and lots.

create trigger search_tray_added after insert on tray
begin
  insert into search_due values ('tray', new.id)
    on conflict do nothing;
end;

create trigger search_tray_changed after update on tray
begin
  insert into search_due values ('tray', new.id)
    on conflict do nothing;
end;

create trigger search_tray_renamed after update of name, lot on tray
when old.name <> new.name or old.lot <> new.lot
begin
  insert into search_due select 'traybone', id from tray_bone where tray_id = new.id
    on conflict do nothing;
end;

create trigger search_lot_added after insert on lot
begin
  insert into search_due values ('lot', new.id)
    on conflict do nothing;
end;

create trigger search_lot_changed after update on lot
begin
  insert into search_due values ('lot', new.id)
    on conflict do nothing;
end;

-- The Shelf.

create trigger search_animal_added after insert on animal
begin
  insert into search_due values ('animal', new.id)
    on conflict do nothing;
end;

create trigger search_animal_changed after update on animal
begin
  insert into search_due values ('animal', new.id)
    on conflict do nothing;
end;

create trigger search_animal_register_added after insert on animal_register
begin
  insert into search_due values ('animal', new.animal_id)
    on conflict do nothing;
end;

create trigger search_animal_register_changed after update on animal_register
begin
  insert into search_due values ('animal', new.animal_id)
    on conflict do nothing;
end;

create trigger search_animal_register_removed after delete on animal_register
begin
  insert into search_due values ('animal', old.animal_id)
    on conflict do nothing;
end;

create trigger search_animal_renamed after update of taxon on animal
when old.taxon is not new.taxon
begin
  insert into search_due values ('shelfreading', new.id)
    on conflict do nothing;
  insert into search_due values ('shelfcorrection', new.id)
    on conflict do nothing;
end;

create trigger search_shelf_reading_added after insert on shelf_reading
begin
  insert into search_due values ('shelfreading', new.animal_id)
    on conflict do nothing;
end;

create trigger search_shelf_correction_added after insert on shelf_correction
begin
  insert into search_due values ('shelfcorrection', new.animal_id)
    on conflict do nothing;
end;

create trigger search_accepted_finding_added after insert on accepted_finding
begin
  insert into search_due values ('acceptedfinding', new.number)
    on conflict do nothing;
end;

create trigger search_accepted_finding_removed after delete on accepted_finding
begin
  insert into search_due values ('acceptedfinding', old.number)
    on conflict do nothing;
end;

create trigger search_house_taxon_added after insert on house_taxon
begin
  insert into search_due values ('housetaxon', new.name)
    on conflict do nothing;
end;

create trigger search_house_taxon_changed after update on house_taxon
begin
  insert into search_due values ('housetaxon', new.name)
    on conflict do nothing;
end;

-- People, old cards, the pile, pictures.

create trigger search_person_added after insert on person
begin
  insert into search_due values ('person', new.id)
    on conflict do nothing;
end;

create trigger search_person_changed after update on person
begin
  insert into search_due values ('person', new.id)
    on conflict do nothing;
end;

create trigger search_old_card_added after insert on old_card
begin
  insert into search_due values ('oldcard', new.number)
    on conflict do nothing;
end;

create trigger search_old_card_decision_added after insert on old_card_decision
begin
  insert into search_due values ('oldcarddecision', new.number)
    on conflict do nothing;
end;

create trigger search_arrival_added after insert on arrival
begin
  insert into search_due values ('arrival', new.number)
    on conflict do nothing;
end;

create trigger search_arrival_changed after update on arrival
begin
  insert into search_due values ('arrival', new.number)
    on conflict do nothing;
end;

create trigger search_arrival_interest_added after insert on arrival_interest
begin
  insert into search_due values ('arrivalinterest', new.number)
    on conflict do nothing;
end;

create trigger search_photo_added after insert on photo
begin
  insert into search_due values ('photo', new.id)
    on conflict do nothing;
end;

create trigger search_photo_changed after update on photo
begin
  insert into search_due values ('photo', new.id)
    on conflict do nothing;
end;

create trigger search_photo_removed after delete on photo
begin
  insert into search_due values ('photo', old.id)
    on conflict do nothing;
end;

-- What the file holds already.

insert into search_text (part, renewed_by, opens, hit_key, who, content)
  select * from search_of_traybone;
insert into search_text (part, renewed_by, opens, hit_key, who, content)
  select * from search_of_bonecall;
insert into search_text (part, renewed_by, opens, hit_key, who, content)
  select * from search_of_elementcall;
insert into search_text (part, renewed_by, opens, hit_key, who, content)
  select * from search_of_reading;
insert into search_text (part, renewed_by, opens, hit_key, who, content)
  select * from search_of_stoprecord;
insert into search_text (part, renewed_by, opens, hit_key, who, content)
  select * from search_of_associationbone;
insert into search_text (part, renewed_by, opens, hit_key, who, content)
  select * from search_of_scrap;
insert into search_text (part, renewed_by, opens, hit_key, who, content)
  select * from search_of_tray;
insert into search_text (part, renewed_by, opens, hit_key, who, content)
  select * from search_of_lot;
insert into search_text (part, renewed_by, opens, hit_key, who, content)
  select * from search_of_animal;
insert into search_text (part, renewed_by, opens, hit_key, who, content)
  select * from search_of_shelfreading;
insert into search_text (part, renewed_by, opens, hit_key, who, content)
  select * from search_of_shelfcorrection;
insert into search_text (part, renewed_by, opens, hit_key, who, content)
  select * from search_of_acceptedfinding;
insert into search_text (part, renewed_by, opens, hit_key, who, content)
  select * from search_of_housetaxon;
insert into search_text (part, renewed_by, opens, hit_key, who, content)
  select * from search_of_person;
insert into search_text (part, renewed_by, opens, hit_key, who, content)
  select * from search_of_oldcard;
insert into search_text (part, renewed_by, opens, hit_key, who, content)
  select * from search_of_oldcarddecision;
insert into search_text (part, renewed_by, opens, hit_key, who, content)
  select * from search_of_arrival;
insert into search_text (part, renewed_by, opens, hit_key, who, content)
  select * from search_of_arrivalinterest;
insert into search_text (part, renewed_by, opens, hit_key, who, content)
  select * from search_of_photo;
