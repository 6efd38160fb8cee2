-- Keeping and erasing: a legal hold on a case, when its words were erased, and the one way an event's sealed body is rewritten.
ALTER TABLE "case" ADD COLUMN held_ms bigint;
ALTER TABLE "case" ADD COLUMN erased_ms bigint;

-- Under a new key the same body is sealed anew, and an erased one is replaced by its hashes; what happened when, its place and its
-- hash never change. Whoever does it says so for the transaction.
CREATE OR REPLACE FUNCTION refuse_change() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF TG_OP = 'UPDATE' AND current_setting('nightjar.rewrites_bodies', true) = 'on'
    AND (NEW.case_id, NEW.number, NEW.at_ms, NEW.type, NEW.hash) = (OLD.case_id, OLD.number, OLD.at_ms, OLD.type, OLD.hash)
  THEN
    RETURN NEW;
  END IF;
  RAISE EXCEPTION 'events are only ever added';
END
$$;
