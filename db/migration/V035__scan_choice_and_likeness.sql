CREATE SCHEMA scan;

-- Labels that are easily taken for each other have the same skeleton: case, O and 0, I, l and 1, leading noughts of a
-- number, and marks between its parts make no difference.
CREATE FUNCTION scan.skeleton(label text) RETURNS text LANGUAGE sql IMMUTABLE PARALLEL SAFE
  RETURN regexp_replace(
    regexp_replace(translate(upper(label COLLATE "C"), 'OIL', '011'), '(?<![0-9])0+(?=[0-9])', '', 'g'),
    '[-_ ./:,;+#*]+', '', 'g');
COMMENT ON FUNCTION scan.skeleton IS 'what a label has in common with those it is easily taken for';

CREATE INDEX ON production.unit (scan.skeleton(serial));
CREATE INDEX ON materials.lot (scan.skeleton(number));
CREATE INDEX ON materials.container (scan.skeleton(label));
CREATE INDEX ON materials.receipt_supplier_lot (scan.skeleton(supplier_lot));
CREATE INDEX ON cure.run (scan.skeleton(number));
CREATE INDEX ON electrical.run (scan.skeleton(number));
CREATE INDEX ON production.carrier (scan.skeleton(code));

CREATE TABLE scan.choice (
  entry bigint PRIMARY KEY REFERENCES ledger.entry,
  scanned text NOT NULL,
  what text NOT NULL CHECK (what IN ('UNIT', 'LOT', 'SUPPLIER_LOT', 'CONTAINER', 'CARRIER', 'ITEM', 'STATION', 'POSITION', 'OTHER', 'READING')),
  name text NOT NULL,
  item text,
  issuer text,
  CHECK (what = 'UNIT' OR item IS NULL AND issuer IS NULL)
);
COMMENT ON TABLE scan.choice IS 'what a person said that a scanned text means';
CREATE INDEX ON scan.choice USING hash (scanned);
CALL ledger.keep_as_history('scan.choice');
