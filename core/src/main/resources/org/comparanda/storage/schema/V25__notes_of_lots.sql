-- Where a lot was found, as recorded, and what is dangerous about it. A tray's own words stand beside.
alter table lot add column provenance text;
alter table lot add column hazards text;
