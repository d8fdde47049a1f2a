-- Which answer a caller's Idempotency-Key stands for. A row is written in the transaction of its
-- record, so there is never one without the other. "fingerprint" is the SHA-256 of the request in
-- canonical form.
create table idempotency_key (
  caller varchar(200) not null,
  idempotency_key varchar(200) not null,
  fingerprint varchar(64) not null,
  record_id uuid not null references audit_record (id),
  expires_at timestamp with time zone not null,
  primary key (caller, idempotency_key)
);

create index idempotency_key_expiry on idempotency_key (expires_at);
