-- Families with several phones; and who changed what.

CREATE TABLE family_phone (                 -- phones beside the one a family is enrolled by
  phone_id bigint PRIMARY KEY REFERENCES phone,
  family_id bigint NOT NULL REFERENCES family
);
CREATE INDEX family_phone_family ON family_phone (family_id);

ALTER TABLE audit ADD COLUMN by_whom bytea; -- sealed name; null where the line did it
