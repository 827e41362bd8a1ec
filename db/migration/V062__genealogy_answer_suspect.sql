-- Answers are derived: those of before are asked again, with what follows.
DELETE FROM genealogy.answer;

ALTER TABLE genealogy.answer ADD COLUMN notes text[] NOT NULL DEFAULT '{}';
COMMENT ON COLUMN genealogy.answer.notes IS 'where joining the parts of its scope did nothing';

-- What the answer was asked of, as its lines name things: it is in the answer too, when answers are joined.
CREATE TABLE genealogy.answer_suspect (
  answer text NOT NULL REFERENCES genealogy.answer ON DELETE CASCADE,
  kind text NOT NULL,
  level text NOT NULL,
  depth integer NOT NULL,
  item text NOT NULL,
  name text NOT NULL,
  issuer text,
  class text NOT NULL
);
CREATE INDEX ON genealogy.answer_suspect (answer);
