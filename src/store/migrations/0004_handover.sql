-- What is due that is no case's, and the morning handovers.

CREATE TABLE scheduled (                    -- what the line does by the clock without a case
  what text PRIMARY KEY,
  due_ms bigint NOT NULL
);

CREATE TABLE handover (
  id bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
  at_ms bigint NOT NULL,
  sheet bytea NOT NULL,                     -- sealed HTML, as it was handed over
  acknowledged_ms bigint,
  acknowledged_by bigint REFERENCES phone,
  mail text NOT NULL CHECK (mail IN ('none', 'waiting', 'sent', 'failed')),
  mail_tries integer NOT NULL DEFAULT 0,
  mail_after_ms bigint NOT NULL DEFAULT 0   -- real time: not before
);
CREATE INDEX handover_mail ON handover (id) WHERE mail = 'waiting';
