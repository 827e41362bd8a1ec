-- The station page: what each person has in hand at a station, and every scan with what was said of it.
CREATE SCHEMA station;

CREATE TABLE station.work (
  station text NOT NULL,
  person text NOT NULL,
  state jsonb NOT NULL,
  before jsonb NOT NULL,
  changed_at timestamptz NOT NULL,
  PRIMARY KEY (station, person)
);

-- a scan that is sent twice gets the same word and does nothing
CREATE TABLE station.scan (
  id text PRIMARY KEY CHECK (id ~ '^[A-Za-z0-9][A-Za-z0-9._:-]{0,79}$'),
  station text NOT NULL,
  person text NOT NULL,
  text text NOT NULL,
  scanned_at timestamptz NOT NULL,
  received_at timestamptz NOT NULL,
  was_kept boolean NOT NULL,
  verdict jsonb NOT NULL
);
CREATE INDEX ON station.scan (station, person, received_at DESC);

-- how many scans the page of a person at a station said it still kept, and when
CREATE TABLE station.contact (
  station text NOT NULL,
  person text NOT NULL,
  seen_at timestamptz NOT NULL,
  kept integer NOT NULL CHECK (kept >= 0),
  PRIMARY KEY (station, person)
);
