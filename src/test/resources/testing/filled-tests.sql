-- ${n} test runs of as many receivers, each with a sweep of 26 points: the cell of Easwarakhanthan et al. (1986), its current
-- scaled by up to 5 %, written past the door.
SET session_replication_role = replica;

INSERT INTO ledger.entry (number, id, kind, kind_version, occurred_at, recorded_at, actor, source, envelope, hash)
OVERRIDING SYSTEM VALUE
SELECT 1000 + g, 'filled-' || g, 'filled', 1, timestamptz '2025-06-01Z' + g * interval '10 s', timestamptz '2025-06-01Z',
  'op-1', 'test', '{}', decode(repeat('00', 32), 'hex')
FROM generate_series(1, ${n}) g;
INSERT INTO ledger.position (position, entry) SELECT number, number FROM ledger.entry WHERE number > 1000;
INSERT INTO production.unit (id, item, serial, issuer) OVERRIDING SYSTEM VALUE
SELECT 1000 + g, (SELECT id FROM catalog.item WHERE number = 'RCV'), 'r' || g, 'plant' FROM generate_series(1, ${n}) g;
INSERT INTO electrical.run (id, number) OVERRIDING SYSTEM VALUE
SELECT 1000 + g, 'T' || g FROM generate_series(1, ${n}) g;
INSERT INTO electrical.run_record (entry, run, unit, specification, equipment, started_at, ended_at, verdict)
SELECT 1000 + g, 1000 + g, 1000 + g, (SELECT id FROM catalog.specification WHERE code = 'PULL'),
  (SELECT id FROM catalog.equipment WHERE code = 'RIG'), timestamptz '2025-06-01Z' + g * interval '10 s',
  timestamptz '2025-06-01Z' + g * interval '10 s' + interval '2 s', 'PASS'
FROM generate_series(1, ${n}) g;
INSERT INTO electrical.sweep (entry, ordinal, name, irradiance, cell_temperature, volts, amperes)
SELECT 1000 + g, 1, 'light', 980 + g % 40, 24 + g % 5,
  ARRAY[-0.2057, -0.1291, -0.0588, 0.0057, 0.0646, 0.1185, 0.1678, 0.2132, 0.2545, 0.2924, 0.3269, 0.3585, 0.3873, 0.4137,
    0.4373, 0.4590, 0.4784, 0.4960, 0.5119, 0.5265, 0.5398, 0.5521, 0.5633, 0.5736, 0.5833, 0.5900],
  (SELECT array_agg(i * (1 + (g % 101 - 50) / 1000.0) ORDER BY n) FROM unnest(ARRAY[0.7640, 0.7620, 0.7605, 0.7605, 0.7600,
    0.7590, 0.7570, 0.7570, 0.7555, 0.7540, 0.7505, 0.7465, 0.7385, 0.7280, 0.7065, 0.6755, 0.6320, 0.5730, 0.4990, 0.4130,
    0.3165, 0.2120, 0.1035, -0.0100, -0.1230, -0.2100]) WITH ORDINALITY AS p (i, n))
FROM generate_series(1, ${n}) g;

SET session_replication_role = origin;
