-- Which entry was the first to name a thing, so that an answer as known at a cut-off leaves out what nobody had named.
ALTER TABLE production.unit ADD COLUMN named_by bigint REFERENCES ledger.entry;
ALTER TABLE production.carrier ADD COLUMN named_by bigint REFERENCES ledger.entry;
ALTER TABLE materials.lot ADD COLUMN named_by bigint REFERENCES ledger.entry;
ALTER TABLE materials.container ADD COLUMN named_by bigint REFERENCES ledger.entry;
ALTER TABLE catalog.position ADD COLUMN named_by bigint REFERENCES ledger.entry;
COMMENT ON COLUMN production.unit.named_by IS 'the first entry that names it; absent if none tells: it then counts as known since ever';
COMMENT ON COLUMN production.carrier.named_by IS 'as in production.unit';
COMMENT ON COLUMN materials.lot.named_by IS 'as in production.unit';
COMMENT ON COLUMN materials.container.named_by IS 'as in production.unit';
COMMENT ON COLUMN catalog.position.named_by IS 'the first entry that released it; absent as in production.unit';

-- Of what was named before, the first by position of all entries whose rows refer to it; a statement for each table.
DO $$
DECLARE
  thing regclass;
  kind text;
  parts text;
BEGIN
  FOR thing, kind IN VALUES ('production.unit'::regclass, 'UNIT'), ('production.carrier', 'CARRIER'),
    ('materials.lot', 'LOT'), ('materials.container', 'CONTAINER')
  LOOP
    SELECT string_agg(format('SELECT %I AS id, entry FROM %s WHERE %I IS NOT NULL', a.attname, c.conrelid::regclass, a.attname),
      ' UNION ALL ') INTO parts
    FROM pg_constraint c
    JOIN pg_attribute a ON a.attrelid = c.conrelid AND a.attnum = c.conkey[1]
    WHERE c.contype = 'f' AND c.confrelid = thing AND array_length(c.conkey, 1) = 1
      AND EXISTS (SELECT FROM pg_attribute e WHERE e.attrelid = c.conrelid AND e.attname = 'entry' AND NOT e.attisdropped);
    parts := parts || format(' UNION ALL SELECT subject, entry FROM holds.hold WHERE kind = %L'
      ' UNION ALL SELECT subject, entry FROM holds.rule_pass WHERE kind = %L'
      ' UNION ALL SELECT subject, entry FROM inbox.finding_subject WHERE kind = %L', kind, kind, kind);
    IF kind = 'UNIT' THEN
      parts := parts || ' UNION ALL SELECT p.parent, i.entry'
        ' FROM production.parent_position p JOIN production.installation i ON i.parent_position = p.id';
    END IF;
    EXECUTE format('UPDATE %s t SET named_by = f.entry FROM ('
      'SELECT DISTINCT ON (n.id) n.id, n.entry FROM (%s) n LEFT JOIN ledger.position p USING (entry)'
      ' ORDER BY n.id, p.position, n.entry) f WHERE f.id = t.id', thing, parts);
  END LOOP;
END $$;

UPDATE catalog.position t SET named_by = f.entry
FROM (
  SELECT DISTINCT ON (r.station, n.code) r.station, n.code, r.entry
  FROM catalog.station_revision r JOIN ledger.entry e ON e.number = r.entry
  CROSS JOIN LATERAL jsonb_array_elements_text(e.envelope::jsonb -> 'body' -> 'positions') AS n (code)
  LEFT JOIN ledger.position p ON p.entry = r.entry
  ORDER BY r.station, n.code, p.position, r.entry) f
WHERE f.station = t.station AND f.code = t.code;
