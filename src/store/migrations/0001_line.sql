-- The line: who wrote, which case it is, what happened, what was said, what is due, who was called.
-- Numbers, names, files, snapshots and texts are sealed (bytea). Times are epoch milliseconds.

CREATE TABLE phone (
  id bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
  finder bytea NOT NULL UNIQUE,             -- HMAC of the number
  number bytea NOT NULL,                    -- sealed
  texts_heard bigint NOT NULL DEFAULT 0,    -- counting it up is what locks the row
  opted_out boolean NOT NULL DEFAULT false,
  asked_about_tube boolean NOT NULL DEFAULT false,
  pending jsonb                             -- a nurse's open yes or no: {word, caseId, untilMs}
);

CREATE TABLE family (
  phone_id bigint PRIMARY KEY REFERENCES phone,
  file bytea NOT NULL,                      -- sealed JSON
  enrolled_ms bigint NOT NULL
);

CREATE TABLE protocol (
  id text PRIMARY KEY,                      -- SHA-256 of its canonical JSON
  body jsonb NOT NULL
);

CREATE TABLE "case" (
  id bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
  phone_id bigint NOT NULL REFERENCES phone,
  protocol_id text NOT NULL REFERENCES protocol,
  file bytea,                               -- sealed JSON of the family's file as the case began; null for an unknown phone
  snapshots bytea,                          -- sealed JSON of the machines; null where the case was born parked
  opened_ms bigint NOT NULL,
  closed_ms bigint,
  parked_ms bigint,                         -- a turn failed twice: a person has it, no machine runs
  last_number integer NOT NULL DEFAULT 0,   -- of its events
  last_hash bytea
);
CREATE UNIQUE INDEX case_one_open ON "case" (phone_id) WHERE closed_ms IS NULL;
CREATE INDEX case_newest ON "case" (phone_id, id);

CREATE TABLE event (
  case_id bigint NOT NULL REFERENCES "case",
  number integer NOT NULL,
  at_ms bigint NOT NULL,
  type text NOT NULL,
  body bytea NOT NULL,                      -- sealed canonical JSON
  hash bytea NOT NULL,                      -- SHA-256 over the hash before it and the JSON
  PRIMARY KEY (case_id, number)
);

CREATE FUNCTION refuse_change() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION 'events are only ever added';
END
$$;
CREATE TRIGGER event_append_only BEFORE UPDATE OR DELETE ON event FOR EACH ROW EXECUTE FUNCTION refuse_change();

CREATE TABLE message (
  id bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY, -- our own sequence: the order each recipient reads in
  phone_id bigint NOT NULL REFERENCES phone,
  case_id bigint REFERENCES "case",
  direction text NOT NULL CHECK (direction IN ('in', 'out')),
  kind text NOT NULL CHECK (kind IN ('text', 'call')),
  body bytea NOT NULL,                      -- sealed
  at_ms bigint NOT NULL,
  cause text NOT NULL,                      -- the request that brought it about
  carrier_id text,
  state text NOT NULL CHECK (state IN ('heard', 'waiting', 'carrying', 'accepted', 'refused', 'unknown', 'delivered')),
  urgent boolean NOT NULL DEFAULT false,    -- an emergency never waits for the message before it
  tries integer NOT NULL DEFAULT 0,
  hold_until_ms bigint NOT NULL DEFAULT 0   -- real time: not before, or how long an unknown fate holds later ones
);
CREATE UNIQUE INDEX message_heard_once ON message (carrier_id) WHERE direction = 'in';
CREATE INDEX message_queue ON message (phone_id, id) WHERE state IN ('waiting', 'carrying', 'unknown');
CREATE INDEX message_thread ON message (phone_id, id);
CREATE INDEX message_cause ON message (cause, id);

CREATE TABLE timer (
  case_id bigint NOT NULL REFERENCES "case",
  machine text NOT NULL,
  id text NOT NULL,
  started_by integer NOT NULL,              -- number of the event that started it: its token
  what text NOT NULL,
  event text NOT NULL,
  started_ms bigint NOT NULL,
  due_ms bigint NOT NULL,
  cause text NOT NULL,
  PRIMARY KEY (case_id, machine, id)
);
CREATE INDEX timer_due ON timer (due_ms);

CREATE TABLE page (
  id bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
  case_id bigint NOT NULL REFERENCES "case",
  phone_id bigint NOT NULL REFERENCES phone,
  level text NOT NULL CHECK (level IN ('routine', 'urgent', 'emergency')),
  at_ms bigint NOT NULL,
  taken_ms bigint,
  open boolean NOT NULL DEFAULT true        -- until anybody takes it or the case closes
);
CREATE INDEX page_case ON page (case_id, id);
CREATE INDEX page_open ON page (phone_id) WHERE open;

CREATE TABLE clock (
  single boolean PRIMARY KEY DEFAULT true CHECK (single),
  now_ms bigint NOT NULL                    -- the practice clock; a live line has no row here
);

CREATE TABLE audit (
  id bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
  at_ms bigint NOT NULL,
  what text NOT NULL,
  phone_id bigint REFERENCES phone
);
