-- Pictures and voice notes of families: fetched from the carrier after the turn, kept sealed, erased with their case.
CREATE TABLE media (
  id bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
  message_id bigint NOT NULL REFERENCES message, -- the text it came with
  place integer NOT NULL,
  phone_id bigint NOT NULL REFERENCES phone,
  case_id bigint REFERENCES "case",
  at_ms bigint NOT NULL,
  state text NOT NULL CHECK (state IN ('waiting', 'kept', 'refused')),
  source bytea,                             -- sealed: where the carrier has it; gone once it is kept
  type text,
  body bytea,                               -- sealed
  tries integer NOT NULL DEFAULT 0,
  hold_until_ms bigint NOT NULL DEFAULT 0,  -- real time: not before
  UNIQUE (message_id, place)
);
CREATE INDEX media_waiting ON media (id) WHERE state = 'waiting';
CREATE INDEX media_case ON media (case_id);
