-- All that an accepted finding rested on, where it was more than one value, and who accepted it.
-- Empty in rows of an older form, which hold as they did.
alter table accepted_finding add column basis varchar(2000);
alter table accepted_finding add column who varchar(200);
