-- Blank records that are printed for the time without the network, and what became of each.
CREATE SCHEMA paper;

CREATE TABLE paper.sheet (
  entry bigint PRIMARY KEY REFERENCES ledger.entry,
  code text NOT NULL,
  form text NOT NULL CHECK (form IN
    ('OPERATION', 'CHARGE', 'DISCHARGE', 'CLEAN_POINT', 'CARRIER_LOAD', 'RUN', 'SHIPMENT')),
  station bigint NOT NULL REFERENCES catalog.station,
  item bigint REFERENCES catalog.item,
  operation text,
  printed_at timestamptz NOT NULL,
  CHECK ((form = 'OPERATION') = (item IS NOT NULL) AND (item IS NULL) = (operation IS NULL))
);
COMMENT ON TABLE paper.sheet IS 'sheets of blank records that were printed';
CREATE INDEX ON paper.sheet (code);
CALL ledger.keep_as_history('paper.sheet');

CREATE TABLE paper.printed_record (
  entry bigint NOT NULL REFERENCES ledger.entry,
  ordinal integer NOT NULL CHECK (ordinal > 0),
  record text NOT NULL,
  PRIMARY KEY (entry, ordinal)
);
CREATE INDEX ON paper.printed_record (record);
CALL ledger.keep_as_history('paper.printed_record');

CREATE TABLE paper.entered_record (
  entry bigint PRIMARY KEY REFERENCES ledger.entry,
  record text NOT NULL
);
CREATE INDEX ON paper.entered_record (record);
CALL ledger.keep_as_history('paper.entered_record');

CREATE TABLE paper.void_record (
  entry bigint NOT NULL REFERENCES ledger.entry,
  record text NOT NULL,
  what text NOT NULL CHECK (what IN ('BLANK', 'SPOILED', 'LOST')),
  why text NOT NULL,
  PRIMARY KEY (entry, record)
);
CREATE INDEX ON paper.void_record (record);
CALL ledger.keep_as_history('paper.void_record');
