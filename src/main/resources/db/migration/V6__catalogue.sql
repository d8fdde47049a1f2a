-- The catalogue of the shop: every revision of every item, with who told it, when and why.

-- One row. Whoever changes the catalogue locks it, so that several replicas still keep one.
create table catalogue_head (
  id smallint primary key check (id = 1),
  sequence bigint not null
);

insert into catalogue_head (id, sequence) values (1, 0);

-- "revision" is SHA-256 over the content of the whole catalogue.
create table catalogue_revision (
  sequence bigint primary key,
  revision varchar(64) not null,
  made_at timestamp with time zone not null,
  author varchar(200) not null,
  note varchar(500) not null
);

create index catalogue_revision_content on catalogue_revision (revision);

-- An item as it was told, in the units it was told in; "revision" is SHA-256 of that text. An item
-- that was taken away has neither.
create table catalogue_item (
  sequence bigint not null references catalogue_revision (sequence),
  shelf varchar(20) not null,
  name varchar(200) not null,
  revision varchar(64),
  told text,
  primary key (shelf, name, sequence)
);

create index catalogue_item_sequence on catalogue_item (sequence);
