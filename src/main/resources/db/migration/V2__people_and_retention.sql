-- Decisions by people, texts withheld, and a digest of the chain that needs no secret.
-- Stop every service of the first version before this runs: it would not carry the digest on.

-- Digest over all records up to the head; computed at the next start where there are records.
alter table audit_chain_head add column digest varchar(64);

update audit_chain_head
set digest = '0000000000000000000000000000000000000000000000000000000000000000'
where sequence = 0;

-- Not only assessments stand in the chain: acceptances, withdrawals and withholdings do too. "about"
-- is the assessment or acceptance that a record speaks of.
alter table audit_record add column record_type varchar(20) default 'assessment' not null;
alter table audit_record add column about uuid;
alter table audit_record alter column caller drop not null;
alter table audit_record alter column verdict drop not null;
alter table audit_record alter column rule_base drop not null;
alter table audit_record alter column catalogue drop not null;
alter table audit_record alter column engine drop not null;

-- A text that was withheld leaves its digest, and what is left of it.
alter table audit_record alter column body drop not null;
alter table audit_record add column body_digest varchar(64);
alter table audit_record add column remainder text;

create index audit_record_about on audit_record (about, sequence);
create index audit_record_type_job_order on audit_record (record_type, job_order, sequence);
create index audit_record_operation on audit_record (operation, sequence);
create index audit_record_verdict on audit_record (verdict, sequence);
