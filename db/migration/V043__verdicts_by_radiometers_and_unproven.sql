-- Verdicts are kept for the radiometer's readings next to a run too, so that a reading told late is counted at once; and
-- what no raw data prove is not proven, wherever a revision states limits.
DROP VIEW electrical.result;
DROP VIEW electrical.standing;
DROP VIEW cure.standing;

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

-- The verdict that stands as known now, of every run whose revision in force states what can be judged. One that is not
-- kept yet is not proven.
CREATE VIEW cure.standing AS
SELECT r.entry, p.entry AS revision, k.checked, coalesce(v.outcome, 'NOT_PROVEN') AS outcome,
  coalesce(v.sentence, 'It is not judged yet') AS sentence, coalesce(v.measured, false) AS measured,
  v.entry IS NOT NULL AS kept
FROM cure.run_record r
CROSS JOIN LATERAL (
  SELECT p.entry FROM catalog.recipe_revision p WHERE p.recipe = r.recipe AND p.effective_at <= r.started_at
  ORDER BY p.effective_at DESC, p.entry DESC LIMIT 1) p
JOIN catalog.recipe_terms t ON t.entry = p.entry
CROSS JOIN LATERAL (
  SELECT
    coalesce((SELECT CASE WHEN c.verdict = 'BAD' THEN c.entry ELSE 0 END FROM catalog.equipment_check c
      WHERE c.equipment = r.equipment AND c.checked_at > r.ended_at
        AND NOT EXISTS (SELECT FROM ledger.withdrawal w WHERE w.target = c.entry)
      ORDER BY c.checked_at, c.entry LIMIT 1), 0) AS checked,
    coalesce((SELECT c.entry FROM catalog.equipment_check c JOIN catalog.check_radiometer m USING (entry)
      WHERE c.equipment = r.equipment AND c.checked_at <= r.started_at
        AND NOT EXISTS (SELECT FROM ledger.withdrawal w WHERE w.target = c.entry)
      ORDER BY c.checked_at DESC, c.entry DESC LIMIT 1), 0) AS lit_before,
    coalesce((SELECT c.entry FROM catalog.equipment_check c JOIN catalog.check_radiometer m USING (entry)
      WHERE c.equipment = r.equipment AND c.checked_at >= r.ended_at
        AND NOT EXISTS (SELECT FROM ledger.withdrawal w WHERE w.target = c.entry)
      ORDER BY c.checked_at, c.entry LIMIT 1), 0) AS lit_after) k
LEFT JOIN cure.verdict v ON v.entry = r.entry AND v.revision = p.entry AND v.checked = k.checked
  AND v.lit_before = k.lit_before AND v.lit_after = k.lit_after;

CREATE VIEW electrical.standing AS
SELECT r.entry, p.entry AS revision, k.checked, coalesce(v.outcome, 'NOT_PROVEN') AS outcome,
  coalesce(v.sentence, 'It is not judged yet') AS sentence, coalesce(v.measured, false) AS measured,
  v.entry IS NOT NULL AS kept
FROM electrical.run_record r
CROSS JOIN LATERAL (
  SELECT p.entry FROM catalog.specification_revision p
  WHERE p.specification = r.specification AND p.effective_at <= r.started_at
  ORDER BY p.effective_at DESC, p.entry DESC LIMIT 1) p
JOIN catalog.specification_terms t ON t.entry = p.entry
CROSS JOIN LATERAL (
  SELECT coalesce((SELECT CASE WHEN c.verdict = 'BAD' THEN c.entry ELSE 0 END FROM catalog.equipment_check c
    WHERE c.equipment = r.equipment AND c.checked_at > r.ended_at
      AND coalesce(c.specification, r.specification) = r.specification
      AND NOT EXISTS (SELECT FROM ledger.withdrawal w WHERE w.target = c.entry)
    ORDER BY c.checked_at, c.entry LIMIT 1), 0) AS checked) k
LEFT JOIN electrical.verdict v ON v.entry = r.entry AND v.revision = p.entry AND v.checked = k.checked;

-- What counts as the result of a test: a pass that was told is one only if raw data show it, where they can be judged.
CREATE VIEW electrical.result AS
SELECT r.entry, r.run, r.unit, r.specification, r.equipment, r.started_at, r.ended_at,
  CASE WHEN r.verdict <> 'PASS' THEN r.verdict
    ELSE coalesce((SELECT CASE s.outcome WHEN 'PASSED' THEN 'PASS' WHEN 'FAILED' THEN 'FAIL' ELSE 'NOT_PROVEN' END
      FROM electrical.standing s WHERE s.entry = r.entry), r.verdict) END AS verdict
FROM electrical.run_record r;
COMMENT ON VIEW electrical.result IS 'a failure that was told stays one; a pass is one only where raw data or no limits allow it';
