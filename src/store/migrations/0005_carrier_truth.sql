-- What the carrier knows: when an unknown fate is looked up next (real time), and how far its log of texts to us was read.
ALTER TABLE message ADD COLUMN look_ms bigint NOT NULL DEFAULT 0;
CREATE INDEX message_carrier ON message (carrier_id) WHERE direction = 'out';
CREATE TABLE carrier_log (
  single boolean PRIMARY KEY DEFAULT true CHECK (single),
  read_ms bigint NOT NULL
);
