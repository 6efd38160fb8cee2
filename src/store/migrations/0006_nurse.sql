-- Who writes with a family in her own words, until when, and whether she waits for an answer: {phoneId, nurse, untilMs, asked}.
ALTER TABLE "case" ADD COLUMN relay jsonb;
-- A nurse says that the line was wrong: the case is kept for review.
ALTER TABLE "case" ADD COLUMN reported_ms bigint;
-- A call that puts whoever answers it through to this number (sealed).
ALTER TABLE message ADD COLUMN bridge_to bytea;
