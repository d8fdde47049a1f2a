-- Every rule base that ever gave an answer, as the texts of its cards, so that it can judge again.
-- "content" holds everything; the columns before it repeat what it says.
create table rule_base_revision (
  id varchar(64) primary key,
  content_hash varchar(64) not null,
  author varchar(200) not null,
  published_at timestamp with time zone not null,
  content text not null
);
