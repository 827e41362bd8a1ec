-- What raw data say of runs: derived, one row for each run, revision, and next check that says something of it (0 for
-- none): it was bad, or a radiometer was read.
-- Emptied by a migration when the rules of judging change; whatever is missing is computed when it is asked for.
CREATE TABLE cure.verdict (
  entry bigint NOT NULL REFERENCES cure.run_record,
  revision bigint NOT NULL REFERENCES catalog.recipe_revision,
  checked bigint NOT NULL,
  outcome text NOT NULL CHECK (outcome IN ('PASSED', 'NOT_PROVEN', 'FAILED')),
  sentence text NOT NULL,
  measured boolean NOT NULL,
  PRIMARY KEY (entry, revision, checked)
);
CREATE INDEX ON cure.verdict (revision, outcome);
CREATE INDEX ON cure.verdict (checked) WHERE checked <> 0;
COMMENT ON COLUMN cure.verdict.measured IS 'whether there were raw data to judge by';

CREATE TABLE electrical.verdict (
  entry bigint NOT NULL REFERENCES electrical.run_record,
  revision bigint NOT NULL REFERENCES catalog.specification_revision,
  checked bigint NOT NULL,
  outcome text NOT NULL CHECK (outcome IN ('PASSED', 'NOT_PROVEN', 'FAILED')),
  sentence text NOT NULL,
  measured boolean NOT NULL,
  PRIMARY KEY (entry, revision, checked)
);
CREATE INDEX ON electrical.verdict (revision, outcome);
CREATE INDEX ON electrical.verdict (checked) WHERE checked <> 0;
COMMENT ON COLUMN electrical.verdict.measured IS 'whether there were raw data to judge by';

-- The verdict that stands for a run as known now: under the revision in force when it began, and after the next check.
CREATE VIEW cure.standing AS
SELECT r.entry, v.revision, v.checked, v.outcome, v.sentence, v.measured
FROM cure.run_record r
CROSS JOIN LATERAL (
  SELECT p.entry FROM catalog.recipe_revision p WHERE p.recipe = r.recipe AND p.effective_at <= r.started_at
  ORDER BY p.effective_at DESC, p.entry DESC LIMIT 1) p
LEFT JOIN LATERAL (
  SELECT c.entry, c.verdict, EXISTS (SELECT FROM catalog.check_radiometer m WHERE m.entry = c.entry) AS radiometer
  FROM catalog.equipment_check c
  WHERE c.equipment = r.equipment AND c.checked_at > r.ended_at
    AND NOT EXISTS (SELECT FROM ledger.withdrawal w WHERE w.target = c.entry)
  ORDER BY c.checked_at, c.entry LIMIT 1) k ON true
JOIN cure.verdict v ON v.entry = r.entry AND v.revision = p.entry
  AND v.checked = CASE WHEN k.verdict = 'BAD' OR k.radiometer THEN k.entry ELSE 0 END;

CREATE VIEW electrical.standing AS
SELECT r.entry, v.revision, v.checked, v.outcome, v.sentence, v.measured
FROM electrical.run_record r
CROSS JOIN LATERAL (
  SELECT p.entry FROM catalog.specification_revision p
  WHERE p.specification = r.specification AND p.effective_at <= r.started_at
  ORDER BY p.effective_at DESC, p.entry DESC LIMIT 1) p
LEFT JOIN LATERAL (
  SELECT c.entry, c.verdict, EXISTS (SELECT FROM catalog.check_radiometer m WHERE m.entry = c.entry) AS radiometer
  FROM catalog.equipment_check c
  WHERE c.equipment = r.equipment AND c.checked_at > r.ended_at
    AND coalesce(c.specification, r.specification) = r.specification
    AND NOT EXISTS (SELECT FROM ledger.withdrawal w WHERE w.target = c.entry)
  ORDER BY c.checked_at, c.entry LIMIT 1) k ON true
JOIN electrical.verdict v ON v.entry = r.entry AND v.revision = p.entry
  AND v.checked = CASE WHEN k.verdict = 'BAD' OR k.radiometer THEN k.entry ELSE 0 END;

-- What counts as the result of a test: what its raw data say where they can be judged, else what was told.
CREATE VIEW electrical.result AS
SELECT r.entry, r.run, r.unit, r.specification, r.equipment, r.started_at, r.ended_at,
  CASE WHEN r.verdict <> 'PASS' THEN r.verdict
    WHEN EXISTS (SELECT FROM electrical.standing s WHERE s.entry = r.entry AND s.measured AND s.outcome <> 'PASSED')
    THEN 'FAIL' ELSE r.verdict END AS verdict
FROM electrical.run_record r;
COMMENT ON VIEW electrical.result IS 'a failure that was told stays one; a pass is one if the raw data do not deny it';

-- Raw readings of insulation and ground testers.
CREATE TABLE electrical.safety_reading (
  entry bigint NOT NULL REFERENCES electrical.run_record,
  ordinal integer NOT NULL,
  path text NOT NULL CHECK (path IN ('INSULATION', 'GROUND')),
  volts numeric NOT NULL,
  amperes numeric NOT NULL,
  seconds numeric NOT NULL CHECK (seconds >= 0),
  PRIMARY KEY (entry, ordinal)
);
COMMENT ON TABLE electrical.safety_reading IS 'voltage, the current that flowed, and for how long it was held';
CALL ledger.keep_as_history('electrical.safety_reading');
