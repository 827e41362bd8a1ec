-- Makes the filled plant of ${n} receivers one whose routes and structures demand what was done, with a record of nearly
-- all of it: one receiver in a thousand lacks its bond, one was taken out for good. Two modules are left in each panel.
-- Gel comes from a new lot every 400 receivers.
SET session_replication_role = replica;

INSERT INTO ledger.entry (number, id, kind, kind_version, occurred_at, recorded_at, actor, source, envelope, hash)
OVERRIDING SYSTEM VALUE
SELECT 1000 + ${n} * 5 + g, 'demanding-' || g, 'filled', 1, timestamptz '2025-01-01Z' + g * interval '10 s',
  timestamptz '2025-01-01Z', 'op-1', 'test', '{}', decode(repeat('00', 32), 'hex')
FROM generate_series(1, ${n} * 5 + 100) g;
INSERT INTO ledger.position (position, entry) SELECT number, number FROM ledger.entry WHERE number > 1000 + ${n} * 5;

DELETE FROM ledger.withdrawal WHERE (target - 1000 - ${n}) % 1000 <> 50;
DELETE FROM production.removal WHERE child_unit % 1000 <> 0;
DELETE FROM production.installation WHERE child_unit > ${n} * 2 AND (child_unit - 1) % 10 >= 2;

INSERT INTO materials.lot (id, number) OVERRIDING SYSTEM VALUE
SELECT ${n} + g, 'G' || g FROM generate_series(1, ${n} / 400) g
UNION ALL SELECT ${n} * 2 + g, 'Q' || g FROM generate_series(1, ${n} / 1000) g;
INSERT INTO materials.receipt (entry, lot, item, received_at, quantity, unit_of_measure)
SELECT 1000 + ${n} * 9 + ${n} / 2 + row_number() OVER (), l.id,
  (SELECT id FROM catalog.item WHERE number = CASE left(l.number, 1) WHEN 'G' THEN 'GEL' ELSE 'SIL' END),
  timestamptz '2025-01-01Z', 100, 'g' FROM materials.lot l WHERE l.id > ${n};

INSERT INTO production.step (entry, operation, station, started_at, ended_at)
SELECT 1000 + ${n} * (4 + k.turn) + g, k.operation, (SELECT min(id) FROM catalog.station),
  timestamptz '2025-01-01Z' + g * interval '10 s' + k.turn * interval '8 min',
  timestamptz '2025-01-01Z' + g * interval '10 s' + k.turn * interval '8 min' + interval '2 s'
FROM generate_series(1, ${n}) g CROSS JOIN (VALUES (1, 'coat'), (4, 'optic')) k(turn, operation)
UNION ALL
SELECT 1000 + ${n} * 9 + g, k.operation, (SELECT min(id) FROM catalog.station), timestamptz '2025-03-01Z', timestamptz '2025-03-01 00:01Z'
FROM generate_series(1, ${n} / 10 + ${n} / 100 + ${n} / 1000) g CROSS JOIN LATERAL (
  SELECT CASE WHEN g <= ${n} / 10 THEN 'seal' WHEN g <= ${n} / 10 + ${n} / 100 THEN 'close' ELSE 'frame' END) k(operation);
INSERT INTO production.step_unit (entry, unit)
SELECT s.entry, (s.entry - 1000 - 1) % ${n} + 1 FROM production.step s WHERE s.operation IN ('coat', 'optic')
UNION ALL SELECT s.entry, ${n} + s.entry - 1000 - ${n} * 9 FROM production.step s WHERE s.operation = 'seal'
UNION ALL SELECT s.entry, ${n} * 2 + s.entry - 1000 - ${n} * 9 - ${n} / 10 FROM production.step s WHERE s.operation = 'close'
UNION ALL SELECT s.entry, ${n} * 3 + s.entry - 1000 - ${n} * 9 - ${n} / 10 - ${n} / 100 FROM production.step s WHERE s.operation = 'frame';
ANALYZE;
INSERT INTO production.step_use (entry, ordinal, item, lot)
SELECT s.entry, 1, (SELECT id FROM catalog.item WHERE number = 'GEL'), ${n} + (u.unit - 1) / 400 + 1
FROM production.step s JOIN production.step_unit u USING (entry) WHERE s.operation = 'optic'
UNION ALL
SELECT s.entry, 1, (SELECT id FROM catalog.item WHERE number = 'SIL'), ${n} * 2 + (u.unit - ${n} - 1) / 100 + 1
FROM production.step s JOIN production.step_unit u USING (entry) WHERE s.operation = 'seal';

INSERT INTO cure.run (id, number) OVERRIDING SYSTEM VALUE SELECT g, 'C-' || g FROM generate_series(1, ${n} / 20) g;
INSERT INTO cure.run_record (entry, run, recipe, equipment, started_at, ended_at)
SELECT 1000 + ${n} * 6 + g, g, (SELECT id FROM catalog.recipe WHERE code = 'BAKE'), (SELECT id FROM catalog.equipment WHERE code = 'OVEN'),
  timestamptz '2025-01-01Z' + g * interval '200 s' + interval '16 min', timestamptz '2025-01-01Z' + g * interval '200 s' + interval '20 min'
FROM generate_series(1, ${n} / 20) g;
INSERT INTO cure.run_unit (entry, unit) SELECT 1000 + ${n} * 6 + (g - 1) / 20 + 1, g FROM generate_series(1, ${n}) g;
INSERT INTO electrical.run (id, number) OVERRIDING SYSTEM VALUE SELECT g, 'T-' || g FROM generate_series(1, ${n}) g;
INSERT INTO electrical.run_record (entry, run, unit, specification, equipment, started_at, ended_at, verdict)
SELECT 1000 + ${n} * 7 + g, g, g, (SELECT id FROM catalog.specification WHERE code = 'PULL'), (SELECT id FROM catalog.equipment WHERE code = 'RIG'),
  timestamptz '2025-01-01Z' + g * interval '10 s' + interval '24 min', timestamptz '2025-01-01Z' + g * interval '10 s' + interval '25 min', 'PASS'
FROM generate_series(1, ${n}) g;

-- released before anything was done
UPDATE catalog.route_revision SET effective_at = timestamptz '2024-01-01Z';
UPDATE catalog.structure_revision SET effective_at = timestamptz '2024-01-01Z';

SELECT setval(pg_get_serial_sequence('ledger.entry', 'number'), 1000 + ${n} * 10 + 100),
  setval(pg_get_serial_sequence('materials.lot', 'id'), ${n} * 3),
  setval(pg_get_serial_sequence('cure.run', 'id'), ${n}),
  setval(pg_get_serial_sequence('electrical.run', 'id'), ${n});
SET session_replication_role = DEFAULT;
ANALYZE;
