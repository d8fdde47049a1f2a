-- Who is told of what happens, and what waits to be told.

-- "secret" has to be readable: every event is signed with it. "types" are parted by blanks.
create table event_subscription (
  id uuid primary key,
  target varchar(2000) not null,
  types varchar(1000) not null,
  secret varchar(200) not null,
  made_by varchar(200) not null,
  made_at timestamp with time zone not null
);

-- The outbox: a row for every subscriber that an event has still to be sent to, written in the
-- transaction of what the event tells of, and gone once it was taken. No foreign key to the
-- subscription, so that one that is deleted at that moment keeps no record out.
create table event_outbox (
  id uuid primary key,
  subscription uuid not null,
  event_id varchar(64) not null,
  event_type varchar(100) not null,
  body text not null,
  made_at timestamp with time zone not null,
  state varchar(20) not null,
  tries integer not null,
  tried_at timestamp with time zone,
  said varchar(500)
);

create index event_outbox_subscription on event_outbox (subscription, state);

-- The table of the library db-scheduler, which sends what is in the outbox.
create table scheduled_tasks (
  task_name varchar(100) not null,
  task_instance varchar(100) not null,
  task_data bytea,
  execution_time timestamp with time zone not null,
  picked boolean not null,
  picked_by varchar(200),
  last_success timestamp with time zone,
  last_failure timestamp with time zone,
  consecutive_failures integer,
  last_heartbeat timestamp with time zone,
  version bigint not null,
  priority smallint,
  primary key (task_name, task_instance)
);

create index scheduled_tasks_execution on scheduled_tasks (execution_time);
create index scheduled_tasks_heartbeat on scheduled_tasks (last_heartbeat);
