-- Why a verdict is what it is, by the key of a message and what stands in its places, so that each reader has it in the
-- language of the page. Verdicts are derived: they are judged anew when they are asked for.
TRUNCATE cure.judged_again, cure.judged_again_line, electrical.judged_again, electrical.judged_again_line;

ALTER TABLE cure.verdict DROP COLUMN sentence, ADD COLUMN said jsonb NOT NULL;
ALTER TABLE electrical.verdict DROP COLUMN sentence, ADD COLUMN said jsonb NOT NULL;
COMMENT ON COLUMN cure.verdict.said IS 'why, as the key of a message and what stands in its places';
COMMENT ON COLUMN electrical.verdict.said IS 'why, as the key of a message and what stands in its places';

ALTER TABLE cure.judged_again_line
  DROP COLUMN before_sentence, DROP COLUMN after_sentence,
  ADD COLUMN before_said jsonb NOT NULL, ADD COLUMN after_said jsonb NOT NULL;
ALTER TABLE electrical.judged_again_line
  DROP COLUMN before_sentence, DROP COLUMN after_sentence,
  ADD COLUMN before_said jsonb NOT NULL, ADD COLUMN after_said jsonb NOT NULL;

-- The verdict that stands as known now, of every run whose revision in force states what can be judged. One that is not
-- kept yet is not proven, and says nothing.
CREATE VIEW cure.standing AS
SELECT r.entry, p.entry AS revision, k.checked, coalesce(v.outcome, 'NOT_PROVEN') AS outcome,
  v.said, coalesce(v.measured, false) AS measured,
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
  v.said, coalesce(v.measured, false) AS measured,
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
