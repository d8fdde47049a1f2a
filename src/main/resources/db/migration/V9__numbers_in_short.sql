-- What judging an answer again needs of its record, in short. The record is the truth: a row here is
-- made from it and goes with it, and a record of before has none until somebody needs it. The columns
-- repeat what the record says, so that its row, with its long text, need not be read.
create table audit_short (
  sequence bigint primary key references audit_record (sequence),
  id uuid not null,
  job_order varchar(200),
  verdict varchar(200) not null,
  body bytea not null
);

-- Answers in the order they were given, without looking at every one of them.
create index audit_record_type on audit_record (record_type, sequence);
