-- The rota's calendars and the swaps people agree on.

CREATE TABLE rota_calendar (
  finder bytea PRIMARY KEY,                 -- HMAC of where it comes from
  text bytea NOT NULL,                      -- sealed; the last good one
  etag text
);

CREATE TABLE rota_swap (                    -- from from_ms to to_ms each stands in the other's place, once agreed
  id bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
  asker_id bigint NOT NULL REFERENCES phone,
  other_id bigint NOT NULL REFERENCES phone,
  from_ms bigint NOT NULL,
  to_ms bigint NOT NULL CHECK (to_ms > from_ms),
  asked_ms bigint NOT NULL,
  agreed_ms bigint,
  refused_ms bigint
);
CREATE INDEX rota_swap_agreed ON rota_swap (to_ms) WHERE agreed_ms IS NOT NULL;
