-- Stations of which somebody, or the server itself, said that not everything done there is recorded, until they caught up.
CREATE TABLE quality.station_behind (
  entry bigint PRIMARY KEY REFERENCES ledger.entry,
  station bigint NOT NULL REFERENCES catalog.station,
  since timestamptz NOT NULL,
  page uuid,
  why text NOT NULL
);
COMMENT ON COLUMN quality.station_behind.since IS 'all that was done there before is recorded';
COMMENT ON COLUMN quality.station_behind.page IS 'the page at the station it is about; absent if about all of it';
CREATE INDEX ON quality.station_behind (page, since);
CALL ledger.keep_as_history('quality.station_behind');

CREATE TABLE quality.station_caught_up (
  entry bigint PRIMARY KEY REFERENCES ledger.entry,
  behind bigint NOT NULL REFERENCES quality.station_behind,
  why text NOT NULL
);
CREATE INDEX ON quality.station_caught_up (behind);
CALL ledger.keep_as_history('quality.station_caught_up');

-- a page that is open says so over and over, with how many scans it keeps, under a name that only it knows
DROP TABLE station.contact;
CREATE TABLE station.page (
  page uuid PRIMARY KEY,
  station text NOT NULL,
  person text NOT NULL,
  kept integer NOT NULL CHECK (kept >= 0),
  is_open boolean NOT NULL,
  caught_up_at timestamptz NOT NULL
);
COMMENT ON COLUMN station.page.caught_up_at IS 'when it last kept nothing';
