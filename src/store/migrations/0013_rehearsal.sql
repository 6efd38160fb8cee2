-- A case played for practice, and the phone of the nurse who asked for it; null where the family did.
ALTER TABLE "case" ADD COLUMN rehearsal boolean NOT NULL DEFAULT false;
ALTER TABLE "case" ADD COLUMN rehearsal_by bigint REFERENCES phone;
