-- The two roles of a live line's database. Once, as a superuser, in the line's own empty database:
--   psql --file deploy/roles.sql "$SUPERUSER_URL"
-- then give both a password (\password nightjar_owner, \password nightjar_line). The owner migrates, purges and changes the key;
-- the line itself runs as nightjar_line and may only do what its statements do.
DO $$
BEGIN
  IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = 'nightjar_owner') THEN
    CREATE ROLE nightjar_owner LOGIN NOSUPERUSER NOCREATEDB NOCREATEROLE;
  END IF;
  IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = 'nightjar_line') THEN
    CREATE ROLE nightjar_line LOGIN NOSUPERUSER NOCREATEDB NOCREATEROLE;
  END IF;
  EXECUTE format('REVOKE ALL ON DATABASE %I FROM PUBLIC', current_database());
  EXECUTE format('GRANT CONNECT, CREATE ON DATABASE %I TO nightjar_owner', current_database());
  EXECUTE format('GRANT CONNECT ON DATABASE %I TO nightjar_line', current_database());
END
$$;
REVOKE ALL ON SCHEMA public FROM PUBLIC;
GRANT USAGE, CREATE ON SCHEMA public TO nightjar_owner;
GRANT USAGE ON SCHEMA public TO nightjar_line;
