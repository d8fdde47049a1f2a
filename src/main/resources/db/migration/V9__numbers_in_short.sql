-- What judging an answer again needs of its record, in short. The record is the truth: a row here is
-- made from it and goes with it, and a record of before has none until somebody needs it.
create table audit_short (
  sequence bigint primary key references audit_record (sequence),
  body bytea not null
);
