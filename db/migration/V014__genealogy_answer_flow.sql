-- Answers are derived: those of before are asked again, with what follows.
DELETE FROM genealogy.answer;

ALTER TABLE genealogy.answer_line ADD COLUMN within text, ADD COLUMN spot text;
COMMENT ON COLUMN genealogy.answer_line.within IS 'the level of the unit that it is inside of now';
COMMENT ON COLUMN genealogy.answer_line.spot IS 'where its outermost unit was seen last, the place alone';
CREATE INDEX ON genealogy.answer_line (answer, spot);

-- How many things of a level and class were reached from which, along their shortest paths.
CREATE TABLE genealogy.answer_flow (
  answer text NOT NULL REFERENCES genealogy.answer ON DELETE CASCADE,
  near_level text,
  near_class text,
  level text NOT NULL,
  class text NOT NULL,
  things bigint NOT NULL CHECK (things > 0),
  CHECK ((near_level IS NULL) = (near_class IS NULL)),
  UNIQUE NULLS NOT DISTINCT (answer, near_level, near_class, level, class)
);
COMMENT ON COLUMN genealogy.answer_flow.near_level IS 'of the thing next to it towards the suspects; absent for a suspect';

-- What waited for a person and touched the answer, at its cut-off.
CREATE TABLE genealogy.answer_finding (
  answer text NOT NULL REFERENCES genealogy.answer ON DELETE CASCADE,
  finding_entry bigint NOT NULL,
  finding_ordinal integer NOT NULL,
  PRIMARY KEY (answer, finding_entry, finding_ordinal),
  FOREIGN KEY (finding_entry, finding_ordinal) REFERENCES inbox.finding
);
CREATE TABLE genealogy.answer_open_line (
  answer text NOT NULL REFERENCES genealogy.answer ON DELETE CASCADE,
  line bigint NOT NULL REFERENCES inbox.line,
  PRIMARY KEY (answer, line)
);
