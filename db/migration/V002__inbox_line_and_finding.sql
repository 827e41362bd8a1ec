CREATE SCHEMA inbox;

CREATE TABLE inbox.line (
  entry bigint PRIMARY KEY REFERENCES ledger.entry,
  file text NOT NULL,
  line_number bigint NOT NULL CHECK (line_number > 0),
  line_length bigint NOT NULL CHECK (line_length >= 0),
  sha256 text NOT NULL CHECK (sha256 ~ '^[0-9a-f]{64}$'),
  text text NOT NULL
);
COMMENT ON COLUMN inbox.line.text IS 'the line as far as it is kept; bytes that are no text stand as U+FFFD';
CALL ledger.keep_as_history('inbox.line');

CREATE TABLE inbox.line_problem (
  entry bigint NOT NULL REFERENCES inbox.line,
  ordinal integer NOT NULL,
  field text NOT NULL,
  reason text NOT NULL,
  remedy text NOT NULL,
  PRIMARY KEY (entry, ordinal)
);
CALL ledger.keep_as_history('inbox.line_problem');

CREATE TABLE inbox.line_name (
  entry bigint NOT NULL REFERENCES inbox.line,
  ordinal integer NOT NULL,
  kind text NOT NULL CHECK (kind IN ('unit', 'lot', 'position')),
  name text NOT NULL,
  PRIMARY KEY (entry, ordinal)
);
COMMENT ON TABLE inbox.line_name IS 'what a line names as far as it could be read';
CREATE INDEX ON inbox.line_name (kind, name);
CALL ledger.keep_as_history('inbox.line_name');

CREATE TABLE inbox.line_settlement (
  entry bigint PRIMARY KEY REFERENCES ledger.entry,
  line bigint NOT NULL REFERENCES inbox.line,
  resubmitted_as text,
  why text NOT NULL
);
CREATE INDEX ON inbox.line_settlement (line);
CALL ledger.keep_as_history('inbox.line_settlement');

CREATE TABLE inbox.finding (
  entry bigint NOT NULL REFERENCES ledger.entry,
  ordinal integer NOT NULL,
  rule text NOT NULL,
  sentence text NOT NULL,
  remedy text NOT NULL,
  PRIMARY KEY (entry, ordinal)
);
CALL ledger.keep_as_history('inbox.finding');

CREATE TABLE inbox.finding_subject (
  entry bigint NOT NULL,
  ordinal integer NOT NULL,
  kind text NOT NULL,
  subject bigint NOT NULL,
  PRIMARY KEY (entry, ordinal, kind, subject),
  FOREIGN KEY (entry, ordinal) REFERENCES inbox.finding
);
CREATE INDEX ON inbox.finding_subject (kind, subject);
CALL ledger.keep_as_history('inbox.finding_subject');

CREATE TABLE inbox.finding_settlement (
  entry bigint PRIMARY KEY REFERENCES ledger.entry,
  finding_entry bigint NOT NULL,
  finding_ordinal integer NOT NULL,
  why text NOT NULL,
  FOREIGN KEY (finding_entry, finding_ordinal) REFERENCES inbox.finding
);
CREATE INDEX ON inbox.finding_settlement (finding_entry, finding_ordinal);
CALL ledger.keep_as_history('inbox.finding_settlement');
