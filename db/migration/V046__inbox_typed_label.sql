-- Labels that nobody could read: typed by one person, typed again by another, and named by what is recorded next.
CREATE TABLE inbox.typed_label (
  entry bigint PRIMARY KEY REFERENCES ledger.entry,
  text text NOT NULL,
  station text NOT NULL,
  typed_by text NOT NULL,
  confirmed_by text NOT NULL,
  typed_at timestamptz NOT NULL
);
CREATE INDEX ON inbox.typed_label (text);
CALL ledger.keep_as_history('inbox.typed_label');

CREATE TABLE inbox.typed_label_use (
  entry bigint NOT NULL REFERENCES ledger.entry,
  typed bigint NOT NULL REFERENCES inbox.typed_label,
  PRIMARY KEY (entry, typed)
);
COMMENT ON TABLE inbox.typed_label_use IS 'what was recorded at the station of a typed label and names what the label says';
CREATE INDEX ON inbox.typed_label_use (typed);
CALL ledger.keep_as_history('inbox.typed_label_use');

-- what a person typed so far; the text waits here so that no page shows it to whoever types it again
CREATE TABLE station.typing (
  station text NOT NULL,
  person text NOT NULL,
  text text NOT NULL,
  confirmed_by text,
  begun_at timestamptz NOT NULL,
  PRIMARY KEY (station, person)
);
