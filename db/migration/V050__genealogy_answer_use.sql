-- Answers are derived and can be asked again: the lines of all that are kept are bounded, those used least recently go first.
ALTER TABLE genealogy.answer
  ADD COLUMN lines bigint NOT NULL DEFAULT 0 CHECK (lines >= 0),
  ADD COLUMN used_at timestamptz;
UPDATE genealogy.answer a SET used_at = computed_at,
  lines = (SELECT count(*) FROM genealogy.answer_line l WHERE l.answer = a.id);
ALTER TABLE genealogy.answer ALTER COLUMN used_at SET NOT NULL;
CREATE INDEX ON genealogy.answer (used_at);
COMMENT ON COLUMN genealogy.answer.used_at IS 'when it was asked for last, to about half a minute';
