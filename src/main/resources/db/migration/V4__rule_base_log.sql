-- What was put into service, in order; what waits for it; and which texts of cards were ever in it.
-- The cards of a revision are in rule_base_revision.
create table rule_base_log (
  number bigint primary key,
  revision varchar(64) not null unique references rule_base_revision (id),
  publisher varchar(200) not null,
  note varchar(2000) not null,
  parent varchar(64)
);

create table rule_base_proposal (
  id uuid primary key,
  proposed_at timestamp with time zone not null,
  content text not null
);

-- A folder that holds an older text of a card has not been edited: it is behind.
create table rule_card_text (
  file varchar(200) not null,
  hash varchar(64) not null,
  primary key (file, hash)
);
