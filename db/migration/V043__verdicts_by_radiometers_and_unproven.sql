-- Verdicts are kept for the radiometer's readings next to a run too, so that a reading told late is counted at once; and
-- what no raw data prove is not proven, wherever a revision states limits.
DROP VIEW electrical.result;
DROP VIEW electrical.standing;
DROP VIEW cure.standing;
-- they are made anew in the next migration

TRUNCATE cure.verdict, electrical.verdict;

ALTER TABLE cure.verdict
  ADD COLUMN lit_before bigint NOT NULL,
  ADD COLUMN lit_after bigint NOT NULL,
  DROP CONSTRAINT verdict_pkey,
  ADD PRIMARY KEY (entry, revision, checked, lit_before, lit_after);
COMMENT ON TABLE cure.verdict IS 'derived: what raw data say of a run, under a revision, by the checks next to it';
COMMENT ON COLUMN cure.verdict.checked IS 'the next check of the equipment if that was bad, else 0';
COMMENT ON COLUMN cure.verdict.lit_before IS 'the last check before it at which a radiometer was read, else 0';
COMMENT ON COLUMN cure.verdict.lit_after IS 'the first check after it at which a radiometer was read, else 0';

ALTER TABLE electrical.verdict
  ADD COLUMN lit_before bigint NOT NULL CHECK (lit_before = 0),
  ADD COLUMN lit_after bigint NOT NULL CHECK (lit_after = 0);
COMMENT ON TABLE electrical.verdict IS 'derived: what raw data say of a test, under a revision, by the next check';
COMMENT ON COLUMN electrical.verdict.checked IS 'the next check of the equipment if that was bad, else 0';
COMMENT ON COLUMN electrical.verdict.lit_before IS 'no lamp says anything of a test; as in cure.verdict';
COMMENT ON COLUMN electrical.verdict.lit_after IS 'no lamp says anything of a test; as in cure.verdict';
