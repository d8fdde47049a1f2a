-- The text of a record, compressed: it was most of its row, and every row that was read or moved
-- dragged it along. Digests, seals and exports are over the text itself, as before. Records of before
-- keep theirs in "body"; a row never has both, so that there are no two texts to choose from.
alter table audit_record add column packed bytea;
alter table audit_record add constraint audit_record_one_text check (body is null or packed is null);
