-- What the line may do, table by table. After every migration, as the owner:
--   DATABASE_URL="$OWNER_URL" npm run migrate && psql --file deploy/rights.sql "$OWNER_URL"
REVOKE ALL ON ALL TABLES IN SCHEMA public FROM nightjar_line;

-- Written once and never changed.
GRANT SELECT, INSERT ON event, protocol, audit TO nightjar_line;
-- Changed, never removed.
GRANT SELECT, INSERT, UPDATE
  ON phone, "case", message, incoming_call, media, page, rota_calendar, rota_swap, handover, carrier_log, pause, family TO nightjar_line;
-- Timers go when they have fired.
GRANT SELECT, INSERT, UPDATE, DELETE ON timer, scheduled TO nightjar_line;
-- Read only: which release and kind of line this is, who is enrolled, and that no practice clock runs here.
GRANT SELECT ON line, migration, clock, family_phone TO nightjar_line;

-- The queue library's own tables, where alarms are kept.
GRANT USAGE ON SCHEMA pgboss TO nightjar_line;
GRANT SELECT, INSERT, UPDATE, DELETE ON ALL TABLES IN SCHEMA pgboss TO nightjar_line;
GRANT USAGE ON ALL SEQUENCES IN SCHEMA pgboss TO nightjar_line;
