-- Tokens are 256 random bits, shown once; only their SHA-256 is kept.
CREATE TABLE access.token (
  id bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
  mark text NOT NULL UNIQUE REFERENCES access.mark,
  purpose text NOT NULL,
  station text CHECK (station <> ''),
  rights text[] NOT NULL CHECK (cardinality(rights) > 0),
  hash bytea NOT NULL UNIQUE CHECK (octet_length(hash) = 32),
  made_at timestamptz NOT NULL,
  made_by text NOT NULL,
  valid_until timestamptz CHECK (valid_until > made_at),
  revoked_at timestamptz,
  last_used_at timestamptz
);

-- Tablets and small computers at which a badge and a PIN are enough, each chosen once for its station.
CREATE TABLE access.device (
  id bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
  station text NOT NULL CHECK (station <> ''),
  hash bytea NOT NULL UNIQUE CHECK (octet_length(hash) = 32),
  made_at timestamptz NOT NULL,
  made_by text NOT NULL,
  revoked_at timestamptz
);
