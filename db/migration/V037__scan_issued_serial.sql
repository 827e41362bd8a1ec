CREATE TABLE scan.issued_serial (
  entry bigint NOT NULL REFERENCES ledger.entry,
  item bigint NOT NULL REFERENCES catalog.item,
  serial text NOT NULL,
  PRIMARY KEY (entry, serial)
);
COMMENT ON TABLE scan.issued_serial IS 'serials whose labels were printed before their units came about';
CREATE INDEX ON scan.issued_serial (item, serial);
CALL ledger.keep_as_history('scan.issued_serial');
