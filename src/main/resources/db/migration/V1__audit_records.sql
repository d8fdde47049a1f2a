-- Written once for H2 and PostgreSQL: only types and syntax that both read alike.

-- One row. Whoever appends locks it, so that several replicas still write one chain.
create table audit_chain_head (
  id smallint primary key check (id = 1),
  key_id varchar(16),
  sequence bigint not null,
  seal varchar(64) not null
);

insert into audit_chain_head (id, key_id, sequence, seal)
values (1, null, 0, '0000000000000000000000000000000000000000000000000000000000000000');

-- The record itself is "body"; the columns before it are there to search by and repeat what it says.
create table audit_record (
  sequence bigint primary key,
  previous varchar(64) not null,
  seal varchar(64) not null,
  id uuid not null unique,
  recorded_at timestamp with time zone not null,
  caller varchar(200) not null,
  job_order varchar(200),
  work_master varchar(200),
  operation varchar(200),
  machine varchar(200),
  verdict varchar(200) not null,
  score double precision,
  rule_base varchar(200) not null,
  catalogue varchar(200) not null,
  engine varchar(200) not null,
  body text not null
);

create index audit_record_time on audit_record (recorded_at);
create index audit_record_job_order on audit_record (job_order, sequence);
create index audit_record_work_master on audit_record (work_master, sequence);
create index audit_record_caller on audit_record (caller, sequence);
create index audit_record_machine on audit_record (machine, sequence);
create index audit_record_rule_base on audit_record (rule_base, sequence);

create table audit_finding (
  sequence bigint not null references audit_record (sequence),
  place integer not null,
  card_id varchar(200) not null,
  severity varchar(200) not null,
  kind varchar(200) not null,
  primary key (sequence, place)
);

create index audit_finding_card on audit_finding (card_id, sequence);
