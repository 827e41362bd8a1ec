ALTER TABLE production.step_use ADD COLUMN container bigint REFERENCES materials.container;
CREATE INDEX ON production.step_use (container) WHERE container IS NOT NULL;

CREATE TABLE production.recovery (
  entry bigint PRIMARY KEY REFERENCES ledger.entry,
  unit bigint NOT NULL REFERENCES production.unit,
  lot bigint NOT NULL REFERENCES materials.lot,
  quantity numeric CHECK (quantity > 0),
  unit_of_measure text,
  station bigint REFERENCES catalog.station,
  recovered_at timestamptz NOT NULL,
  CHECK ((quantity IS NULL) = (unit_of_measure IS NULL))
);
CREATE INDEX ON production.recovery (unit);
CREATE INDEX ON production.recovery (lot);
CALL ledger.keep_as_history('production.recovery');

CREATE TABLE production.scrapping (
  entry bigint NOT NULL REFERENCES ledger.entry,
  unit bigint NOT NULL REFERENCES production.unit,
  station bigint REFERENCES catalog.station,
  why text NOT NULL,
  scrapped_at timestamptz NOT NULL,
  PRIMARY KEY (entry, unit)
);
CREATE INDEX ON production.scrapping (unit);
CALL ledger.keep_as_history('production.scrapping');

CREATE TABLE production.carrier (
  id bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
  code text NOT NULL UNIQUE
);
COMMENT ON TABLE production.carrier IS 'every tray, pallet or rack ever named';

CREATE TABLE production.carrier_load (
  entry bigint NOT NULL REFERENCES ledger.entry,
  ordinal integer NOT NULL,
  carrier bigint NOT NULL REFERENCES production.carrier,
  unit bigint REFERENCES production.unit,
  inner_carrier bigint REFERENCES production.carrier,
  position text,
  station bigint REFERENCES catalog.station,
  loaded_at timestamptz NOT NULL,
  PRIMARY KEY (entry, ordinal),
  CHECK ((unit IS NULL) <> (inner_carrier IS NULL)),
  CHECK (carrier IS DISTINCT FROM inner_carrier)
);
CREATE INDEX ON production.carrier_load (carrier, loaded_at);
CREATE INDEX ON production.carrier_load (carrier, position, loaded_at) WHERE position IS NOT NULL;
CREATE INDEX ON production.carrier_load (unit) WHERE unit IS NOT NULL;
CREATE INDEX ON production.carrier_load (inner_carrier, loaded_at) WHERE inner_carrier IS NOT NULL;
CALL ledger.keep_as_history('production.carrier_load');

CREATE TABLE production.carrier_unload (
  entry bigint NOT NULL REFERENCES ledger.entry,
  ordinal integer NOT NULL,
  carrier bigint NOT NULL REFERENCES production.carrier,
  unit bigint REFERENCES production.unit,
  inner_carrier bigint REFERENCES production.carrier,
  station bigint REFERENCES catalog.station,
  unloaded_at timestamptz NOT NULL,
  PRIMARY KEY (entry, ordinal),
  CHECK (unit IS NULL OR inner_carrier IS NULL)
);
COMMENT ON TABLE production.carrier_unload IS 'a row that names neither unit nor carrier took everything off';
CREATE INDEX ON production.carrier_unload (carrier, unloaded_at);
CREATE INDEX ON production.carrier_unload (carrier, unloaded_at) WHERE unit IS NULL AND inner_carrier IS NULL;
CREATE INDEX ON production.carrier_unload (unit) WHERE unit IS NOT NULL;
CREATE INDEX ON production.carrier_unload (inner_carrier) WHERE inner_carrier IS NOT NULL;
CALL ledger.keep_as_history('production.carrier_unload');

-- What the history says is on carriers: a load ends at the first unload of that thing, or of everything, behind it.
CREATE VIEW production.carrying AS
SELECT l.entry, l.ordinal, l.carrier, l.unit, l.inner_carrier, l.position, l.loaded_at, tstzrange(l.loaded_at, (
    SELECT min(u.unloaded_at) FROM production.carrier_unload u
    WHERE u.carrier = l.carrier
      AND (u.unit = l.unit OR u.inner_carrier = l.inner_carrier OR u.unit IS NULL AND u.inner_carrier IS NULL)
      AND u.unloaded_at >= l.loaded_at AND (u.unloaded_at > l.loaded_at OR u.entry > l.entry)
      AND NOT EXISTS (SELECT FROM ledger.withdrawal w WHERE w.target = u.entry)), '[)') AS during
FROM production.carrier_load l
WHERE NOT EXISTS (SELECT FROM ledger.withdrawal w WHERE w.target = l.entry);

-- State: uses without a scan by position and time, to find those in a stretch in which nothing was loaded; rebuilt from
-- history at any time. What is withdrawn stays in it: whoever reads it asks history.
CREATE VIEW production.use_without_scan AS
SELECT u.entry, u.ordinal, u.item, u.position, tstzrange(s.started_at, s.ended_at, '[]') AS during
FROM production.step_use u JOIN production.step s USING (entry)
WHERE u.lot IS NULL AND u.container IS NULL AND u.position IS NOT NULL;

CREATE TABLE production.unscanned_use (
  entry bigint NOT NULL,
  ordinal integer NOT NULL,
  item bigint NOT NULL,
  position bigint NOT NULL,
  during tstzrange NOT NULL,
  PRIMARY KEY (entry, ordinal),
  FOREIGN KEY (entry, ordinal) REFERENCES production.step_use
);
CREATE INDEX ON production.unscanned_use (item);
CREATE INDEX ON production.unscanned_use
  USING gist (int8range(position, position, '[]'), int8range(item, item, '[]'), during);
INSERT INTO production.unscanned_use SELECT * FROM production.use_without_scan;
CREATE INDEX ON production.step_use (item) WHERE position IS NULL AND lot IS NULL;
