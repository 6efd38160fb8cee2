-- When people stopped the line's advice and let it go on; while one is open every process gives none.
CREATE TABLE pause (
  id bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
  at_ms bigint NOT NULL,
  by bytea NOT NULL,                        -- sealed name
  why bytea,                                -- sealed
  resumed_ms bigint,
  resumed_by bytea                          -- sealed name
);
CREATE UNIQUE INDEX pause_one_open ON pause ((true)) WHERE resumed_ms IS NULL;
