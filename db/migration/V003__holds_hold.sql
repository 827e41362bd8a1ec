CREATE SCHEMA holds;

CREATE TABLE holds.hold (
  entry bigint NOT NULL REFERENCES ledger.entry,
  ordinal integer NOT NULL,
  kind text NOT NULL,
  subject bigint NOT NULL,
  reason text NOT NULL,
  PRIMARY KEY (entry, ordinal)
);
CREATE INDEX ON holds.hold (kind, subject);
CALL ledger.keep_as_history('holds.hold');

CREATE TABLE holds.release (
  entry bigint PRIMARY KEY REFERENCES ledger.entry,
  hold_entry bigint NOT NULL,
  hold_ordinal integer NOT NULL,
  why text NOT NULL,
  FOREIGN KEY (hold_entry, hold_ordinal) REFERENCES holds.hold
);
CREATE INDEX ON holds.release (hold_entry, hold_ordinal);
CALL ledger.keep_as_history('holds.release');
