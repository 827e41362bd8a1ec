CREATE SCHEMA ledger;

-- History is written only while the door holds the entry open, and is never changed afterwards.
CREATE FUNCTION ledger.through_the_door() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF TG_OP <> 'INSERT' THEN
    RAISE EXCEPTION 'history is only appended to: % on %.% refused', TG_OP, TG_TABLE_SCHEMA, TG_TABLE_NAME;
  END IF;
  IF current_setting('sunthread.entry', true) IS DISTINCT FROM NEW.entry::text THEN
    RAISE EXCEPTION 'history is written through the door only: insert into %.% refused', TG_TABLE_SCHEMA, TG_TABLE_NAME;
  END IF;
  RETURN NEW;
END $$;

CREATE FUNCTION ledger.only_appended() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION 'history is only appended to: % on %.% refused', TG_OP, TG_TABLE_SCHEMA, TG_TABLE_NAME;
END $$;

CREATE PROCEDURE ledger.keep_as_history(kept regclass) LANGUAGE plpgsql AS $$
BEGIN
  EXECUTE format('CREATE TRIGGER through_the_door BEFORE INSERT OR UPDATE OR DELETE ON %s '
    'FOR EACH ROW EXECUTE FUNCTION ledger.through_the_door()', kept);
  EXECUTE format('CREATE TRIGGER never_emptied BEFORE TRUNCATE ON %s '
    'FOR EACH STATEMENT EXECUTE FUNCTION ledger.only_appended()', kept);
END $$;

CREATE TABLE ledger.entry (
  number bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
  id text NOT NULL UNIQUE CHECK (id ~ '^[A-Za-z0-9][A-Za-z0-9._:-]{0,99}$'),
  kind text NOT NULL,
  kind_version integer NOT NULL CHECK (kind_version > 0),
  occurred_at timestamptz NOT NULL,
  recorded_at timestamptz NOT NULL,
  actor text NOT NULL,
  source text NOT NULL,
  envelope text NOT NULL,
  hash bytea NOT NULL CHECK (octet_length(hash) = 32)
);
COMMENT ON COLUMN ledger.entry.envelope IS 'the envelope in the canonical form of RFC 8785, as hashed';
COMMENT ON COLUMN ledger.entry.hash IS 'SHA-256 over a zero byte and the canonical form: the leaf hash of RFC 9162';
CREATE TRIGGER only_appended BEFORE UPDATE OR DELETE OR TRUNCATE ON ledger.entry
  FOR EACH STATEMENT EXECUTE FUNCTION ledger.only_appended();

-- Entries wait here from their commit until the sealer gives them a position.
CREATE TABLE ledger.unsealed (
  stamp bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
  entry bigint NOT NULL UNIQUE REFERENCES ledger.entry
);

CREATE TABLE ledger.position (
  position bigint PRIMARY KEY CHECK (position > 0),
  entry bigint NOT NULL UNIQUE REFERENCES ledger.entry
);
CREATE TRIGGER only_appended BEFORE UPDATE OR DELETE OR TRUNCATE ON ledger.position
  FOR EACH STATEMENT EXECUTE FUNCTION ledger.only_appended();

CREATE TABLE ledger.withdrawal (
  entry bigint PRIMARY KEY REFERENCES ledger.entry,
  target bigint NOT NULL REFERENCES ledger.entry CHECK (target <> entry),
  why text NOT NULL
);
CREATE INDEX ON ledger.withdrawal (target);
CALL ledger.keep_as_history('ledger.withdrawal');

CREATE TABLE ledger.correction (
  entry bigint PRIMARY KEY REFERENCES ledger.entry,
  kind text NOT NULL,
  kind_version integer NOT NULL
);
COMMENT ON TABLE ledger.correction IS 'the kind of happening that a correction records anew';
CALL ledger.keep_as_history('ledger.correction');
