CREATE SCHEMA access;

-- Who can stand as actor in the ledger: persons and machines, never with the same mark, none ever given twice.
CREATE TABLE access.mark (
  mark text PRIMARY KEY CHECK (mark ~ '^[A-Za-z0-9][A-Za-z0-9._-]{0,31}$')
);

-- Names are here only and may be blanked; entries hold the mark.
CREATE TABLE access.person (
  id bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
  mark text NOT NULL UNIQUE REFERENCES access.mark,
  name text,
  sign_in text CHECK (sign_in <> ''),
  password_hash text,
  must_change boolean NOT NULL DEFAULT false,
  badge_hash bytea UNIQUE CHECK (octet_length(badge_hash) = 32),
  badge_ending text,
  pin_hash text,
  secrets_changed_at timestamptz NOT NULL,
  blocked boolean NOT NULL DEFAULT false,
  blanked boolean NOT NULL DEFAULT false,
  made_at timestamptz NOT NULL,
  CHECK (NOT blanked OR (blocked AND name IS NULL AND sign_in IS NULL))
);
CREATE UNIQUE INDEX person_sign_in ON access.person (lower(sign_in));
COMMENT ON COLUMN access.person.badge_hash IS 'SHA-256 of the badge as scanned';

CREATE TABLE access.person_role (
  person bigint NOT NULL REFERENCES access.person,
  role text NOT NULL CHECK (role IN ('OPERATOR', 'QUALITY', 'PROCESS', 'AUDITOR', 'ADMINISTRATOR')),
  PRIMARY KEY (person, role)
);

CREATE TABLE access.qualification (
  id bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
  person bigint NOT NULL REFERENCES access.person,
  operation text NOT NULL CHECK (operation <> ''),
  evidence text NOT NULL,
  given_at timestamptz NOT NULL,
  given_by text NOT NULL,
  valid_until timestamptz CHECK (valid_until > given_at),
  withdrawn_at timestamptz,
  withdrawn_by text,
  CHECK ((withdrawn_at IS NULL) = (withdrawn_by IS NULL))
);
CREATE INDEX ON access.qualification (person, operation);

-- Sign-ins that were begun and did not succeed since; shared by all instances, so that a delay holds at each.
CREATE TABLE access.attempt (
  subject text PRIMARY KEY,
  failures integer NOT NULL CHECK (failures > 0),
  last_at timestamptz NOT NULL,
  blocked_until timestamptz
);
CREATE INDEX ON access.attempt (last_at);

CREATE TABLE access.log (
  number bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
  at timestamptz NOT NULL,
  what text NOT NULL,
  actor text,
  about text,
  detail text
);
CREATE INDEX ON access.log (actor);
CREATE TRIGGER only_appended BEFORE UPDATE OR DELETE OR TRUNCATE ON access.log
  FOR EACH STATEMENT EXECUTE FUNCTION ledger.only_appended();
