-- Spells in which the times that a station told are not proven, for a clock that anybody may set told them.
CREATE TABLE quality.unproven_time (
  entry bigint PRIMARY KEY REFERENCES ledger.entry,
  station bigint NOT NULL REFERENCES catalog.station,
  since timestamptz NOT NULL,
  until timestamptz NOT NULL,
  told timestamptz,
  why text NOT NULL,
  CHECK (since <= until)
);
COMMENT ON COLUMN quality.unproven_time.since IS 'any time told from then to until may be any other of them; -infinity if nothing proves a begin';
COMMENT ON COLUMN quality.unproven_time.told IS 'what the clock said; outside of the spell it is wrong';
CREATE INDEX ON quality.unproven_time (station, since);
CALL ledger.keep_as_history('quality.unproven_time');
