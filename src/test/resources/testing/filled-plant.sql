-- A plant of ${n} receivers as history has it after years, written past the door. Ten receivers make a wall, ten walls a
-- module, ten modules a panel. Adhesive comes from a new lot every 100 receivers, at the next of a hundred positions,
-- which is cleaned between lots; every receiver also took solder of a scanned lot, the first fifth of them of lot LARGE.
SET session_replication_role = replica;

INSERT INTO ledger.entry (number, id, kind, kind_version, occurred_at, recorded_at, actor, source, envelope, hash)
OVERRIDING SYSTEM VALUE
SELECT 1000 + g, 'filled-' || g, 'filled', 1, timestamptz '2025-01-01Z' + g * interval '10 s', timestamptz '2025-01-01Z',
  'op-1', 'test', '{}', decode(repeat('00', 32), 'hex')
FROM generate_series(1, ${n} * 5) g;
INSERT INTO ledger.position (position, entry) SELECT number, number FROM ledger.entry WHERE number > 1000;

INSERT INTO production.unit (id, item, serial, issuer) OVERRIDING SYSTEM VALUE
SELECT g, (SELECT id FROM catalog.item WHERE number = 'RCV'), 'r' || g, 'plant' FROM generate_series(1, ${n}) g
UNION ALL
SELECT ${n} + g, (SELECT id FROM catalog.item WHERE number = 'WALL'), 'w' || g, 'plant' FROM generate_series(1, ${n} / 10) g
UNION ALL
SELECT ${n} * 2 + g, (SELECT id FROM catalog.item WHERE number = 'MOD'), 'm' || g, 'plant' FROM generate_series(1, ${n} / 100) g
UNION ALL
SELECT ${n} * 3 + g, (SELECT id FROM catalog.item WHERE number = 'PANEL'), 'p' || g, 'plant' FROM generate_series(1, ${n} / 1000) g;
INSERT INTO production.birth (entry, unit, born_at)
SELECT 1000 + g, g, timestamptz '2025-01-01Z' + g * interval '10 s' FROM generate_series(1, ${n}) g
UNION ALL
SELECT 1000 + ${n} * 3 + g, ${n} + g, timestamptz '2025-01-01Z' FROM generate_series(1, ${n} / 10) g
UNION ALL
SELECT 1000 + ${n} * 3 + ${n} / 10 + g, ${n} * 2 + g, timestamptz '2025-01-01Z' FROM generate_series(1, ${n} / 100) g
UNION ALL
SELECT 1000 + ${n} * 3 + ${n} / 5 + g, ${n} * 3 + g, timestamptz '2025-01-01Z' FROM generate_series(1, ${n} / 1000) g;

INSERT INTO materials.lot (id, number) OVERRIDING SYSTEM VALUE
SELECT g, 'L' || g FROM generate_series(1, ${n} / 100) g
UNION ALL SELECT ${n} / 100 + 1, 'LARGE'
UNION ALL SELECT ${n} / 100 + 1 + g, 'S' || g FROM generate_series(1, ${n} / 100) g;
INSERT INTO materials.receipt (entry, lot, item, received_at, quantity, unit_of_measure)
SELECT 1000 + ${n} * 4 + l.id, l.id, (SELECT id FROM catalog.item WHERE number = CASE WHEN l.number LIKE 'L_%' AND l.number <> 'LARGE' THEN 'ADH' ELSE 'CELL' END),
  timestamptz '2025-01-01Z', 100, 'g' FROM materials.lot l;
INSERT INTO materials.charge (entry, position, lot, charged_at)
SELECT 1000 + ${n} * 4 + ${n} / 25 + l, p.id, l, timestamptz '2025-01-01Z' + (l - 1) * interval '1000 s' - interval '100 s'
FROM generate_series(1, ${n} / 100) l JOIN (SELECT id, row_number() OVER (ORDER BY id) - 1 AS turn FROM catalog.position) p ON p.turn = l % 100;
INSERT INTO materials.discharge (entry, position, lot, discharged_at)
SELECT c.entry + ${n} / 100, c.position, c.lot, c.charged_at + interval '1200 s' FROM materials.charge c;
INSERT INTO materials.clean_point (entry, position, cleaned_at, evidence)
SELECT c.entry + ${n} / 50, c.position, c.charged_at + interval '1300 s', 'purged' FROM materials.charge c;

INSERT INTO production.step (entry, operation, station, started_at, ended_at)
SELECT 1000 + ${n} + g, 'bond', p.station, timestamptz '2025-01-01Z' + g * interval '10 s' - interval '5 s', timestamptz '2025-01-01Z' + g * interval '10 s' - interval '3 s'
FROM generate_series(1, ${n}) g JOIN materials.charge c ON c.lot = (g - 1) / 100 + 1 JOIN catalog.position p ON p.id = c.position;
INSERT INTO production.step_unit (entry, unit) SELECT 1000 + ${n} + g, g FROM generate_series(1, ${n}) g;
INSERT INTO production.step_use (entry, ordinal, item, lot, position)
SELECT 1000 + ${n} + g, 1, (SELECT id FROM catalog.item WHERE number = 'ADH'), NULL, c.position
FROM generate_series(1, ${n}) g JOIN materials.charge c ON c.lot = (g - 1) / 100 + 1
UNION ALL
SELECT 1000 + ${n} + g, 2, (SELECT id FROM catalog.item WHERE number = 'CELL'),
  ${n} / 100 + 1 + CASE WHEN g <= ${n} / 5 THEN 0 ELSE (g - 1) / 100 + 1 END, NULL FROM generate_series(1, ${n}) g;

INSERT INTO production.parent_position (id, parent, position) OVERRIDING SYSTEM VALUE
SELECT g, ${n} + (g - 1) / 10 + 1, ((g - 1) % 10 + 1)::text FROM generate_series(1, ${n}) g
UNION ALL
SELECT ${n} + g, ${n} * 2 + (g - 1) / 10 + 1, ((g - 1) % 10 + 1)::text FROM generate_series(1, ${n} / 10) g
UNION ALL
SELECT ${n} * 2 + g, ${n} * 3 + (g - 1) / 10 + 1, ((g - 1) % 10 + 1)::text FROM generate_series(1, ${n} / 100) g;
INSERT INTO production.installation (entry, child_unit, parent_position, installed_at)
SELECT 1000 + ${n} * 2 + p.id, p.id, p.id, timestamptz '2025-01-01Z' + p.id * interval '10 s' + interval '1 h'
FROM production.parent_position p WHERE p.id <= ${n}
UNION ALL
SELECT 1000 + ${n} * 4 + ${n} / 10 + g, ${n} + g, ${n} + g, timestamptz '2026-01-01Z' FROM generate_series(1, ${n} / 10) g
UNION ALL
SELECT 1000 + ${n} * 4 + ${n} / 5 + g, ${n} * 2 + g, ${n} * 2 + g, timestamptz '2026-01-01Z' FROM generate_series(1, ${n} / 100) g;
INSERT INTO production.removal (entry, child_unit, parent, parent_position, removed_at)
SELECT 1000 + ${n} * 4 + ${n} / 10 * 5 + g / 100, g, p.parent, p.id, timestamptz '2025-12-01Z'
FROM generate_series(100, ${n}, 100) g JOIN production.parent_position p ON p.id = g;
INSERT INTO production.shipment (entry, number, consignee, shipped_at)
SELECT 1000 + ${n} * 4 + ${n} / 10 * 6 + g, 'S-' || g, 'Site North', timestamptz '2026-02-01Z' FROM generate_series(1, ${n} / 1000) g;
INSERT INTO production.shipment_unit (entry, unit)
SELECT h.entry, ${n} * 3 + h.entry - 1000 - ${n} * 4 - ${n} / 10 * 6 FROM production.shipment h;
INSERT INTO ledger.withdrawal (entry, target, why)
SELECT 1000 + ${n} * 4 + ${n} / 10 * 7 + g / 100, 1000 + ${n} + g, 'scanned by mistake' FROM generate_series(50, ${n}, 100) g;
INSERT INTO inbox.finding (entry, ordinal, rule, sentence, remedy)
SELECT 1000 + ${n} * 2 + g, 1, 'unit-is-born', 'It has no birth record', 'Record it' FROM generate_series(3, ${n}, 100) g;
INSERT INTO inbox.finding_subject (entry, ordinal, kind, subject)
SELECT f.entry, 1, 'UNIT', f.entry - 1000 - ${n} * 2 FROM inbox.finding f;
INSERT INTO holds.hold (entry, ordinal, kind, subject, reason)
SELECT 1000 + ${n} * 4 + ${n} / 10 * 8 + g / 200, 1, 'UNIT', g, 'suspect bond' FROM generate_series(200, ${n}, 200) g;

SELECT setval(pg_get_serial_sequence('ledger.entry', 'number'), 1000 + ${n} * 5),
  setval(pg_get_serial_sequence('production.unit', 'id'), ${n} * 4),
  setval(pg_get_serial_sequence('production.parent_position', 'id'), ${n} * 3),
  setval(pg_get_serial_sequence('materials.lot', 'id'), ${n});
INSERT INTO production.unscanned_use SELECT * FROM production.use_without_scan;
SET session_replication_role = DEFAULT;
ANALYZE;
