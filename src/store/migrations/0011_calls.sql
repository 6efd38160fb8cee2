-- Calls to the line: what is spoken and who is rung is settled once, when the call comes in.
CREATE TABLE incoming_call (
  id text PRIMARY KEY,                      -- the carrier's
  at_ms bigint NOT NULL,
  phone_id bigint REFERENCES phone,         -- null where the number was withheld
  case_id bigint REFERENCES "case",
  plan bytea NOT NULL,                      -- sealed JSON
  connected boolean NOT NULL DEFAULT false  -- a person has taken it by a key
);
CREATE INDEX incoming_call_case ON incoming_call (case_id);
