CREATE SCHEMA genealogy;

-- Answers are derived: they can be asked again at their cut-off at any time, and are dropped when they are old.
CREATE TABLE genealogy.answer (
  id text PRIMARY KEY,
  asked jsonb NOT NULL,
  cutoff bigint NOT NULL,
  suspects text[] NOT NULL,
  cutoff_recorded_at timestamptz,
  hash text NOT NULL,
  open_findings bigint NOT NULL,
  open_lines bigint NOT NULL,
  computed_at timestamptz NOT NULL
);
CREATE INDEX ON genealogy.answer (computed_at);

CREATE TABLE genealogy.answer_line (
  answer text NOT NULL REFERENCES genealogy.answer ON DELETE CASCADE,
  kind text NOT NULL,
  level text NOT NULL,
  depth integer NOT NULL,
  item text NOT NULL,
  name text NOT NULL,
  issuer text,
  ever text NOT NULL,
  now text,
  at_shipment text,
  at text,
  reason text NOT NULL,
  path text[] NOT NULL,
  place text NOT NULL,
  holds text[] NOT NULL,
  shipments text[] NOT NULL
);
CREATE UNIQUE INDEX ON genealogy.answer_line (answer, level, name, item, issuer);
COMMENT ON COLUMN genealogy.answer_line.depth IS 'how many levels may lie inside its level: the order of levels';
