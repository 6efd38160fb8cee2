-- Several phones in one case: those that joined, beside the one that opened it.
ALTER TABLE "case" ADD COLUMN joined_ids bigint[] NOT NULL DEFAULT '{}';
ALTER TABLE phone ADD COLUMN joined_id bigint; -- the case it joined last
