-- A keyed hash over the columns by which a record is found, so that a list need not read the whole
-- record to know that they are as they were written. Rows of before have none: what a list shows of
-- them is read from the sealed text.
alter table audit_record add column filed varchar(64);
