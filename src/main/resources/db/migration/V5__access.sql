-- Keys that callers show, and the journal of access.

-- "digest" is the SHA-256 of a secret of 256 random bits; the secret itself is nowhere.
create table api_key (
  id varchar(16) primary key,
  caller varchar(200) not null,
  roles varchar(200) not null,
  digest varchar(64) not null,
  made_at timestamp with time zone not null,
  made_by varchar(200) not null,
  expires_at timestamp with time zone not null,
  revoked_at timestamp with time zone,
  replaces varchar(16) references api_key (id)
);

-- Calls that were denied, alike ones of a few seconds as one row, and what was done with keys. Its
-- ids are UUIDs of version 7, so their order is that of time.
create table access_entry (
  id uuid primary key,
  kind varchar(20) not null,
  first_at timestamp with time zone not null,
  last_at timestamp with time zone not null,
  times integer not null,
  caller varchar(200),
  key_id varchar(16),
  address varchar(64),
  method varchar(10),
  place varchar(200),
  status smallint,
  note varchar(500) not null
);

create index access_entry_caller on access_entry (caller, id);
create index access_entry_kind on access_entry (kind, id);
