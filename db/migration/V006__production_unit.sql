CREATE SCHEMA production;

CREATE TABLE production.unit (
  id bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
  item bigint NOT NULL REFERENCES catalog.item,
  serial text NOT NULL,
  issuer text NOT NULL,
  UNIQUE (serial, item, issuer)
);
COMMENT ON TABLE production.unit IS 'every serial ever named, born here or not';

CREATE TABLE production.birth (
  entry bigint NOT NULL REFERENCES ledger.entry,
  unit bigint NOT NULL REFERENCES production.unit,
  station bigint REFERENCES catalog.station,
  born_at timestamptz NOT NULL,
  PRIMARY KEY (entry, unit)
);
CREATE INDEX ON production.birth (unit);
CALL ledger.keep_as_history('production.birth');

CREATE TABLE production.step (
  entry bigint PRIMARY KEY REFERENCES ledger.entry,
  operation text NOT NULL,
  station bigint NOT NULL REFERENCES catalog.station,
  started_at timestamptz NOT NULL,
  ended_at timestamptz NOT NULL,
  CHECK (ended_at >= started_at)
);
CREATE INDEX ON production.step (station, started_at);
CALL ledger.keep_as_history('production.step');

CREATE TABLE production.step_unit (
  entry bigint NOT NULL REFERENCES production.step,
  unit bigint NOT NULL REFERENCES production.unit,
  PRIMARY KEY (entry, unit)
);
CREATE INDEX ON production.step_unit (unit);
CALL ledger.keep_as_history('production.step_unit');

CREATE TABLE production.step_use (
  entry bigint NOT NULL REFERENCES production.step,
  ordinal integer NOT NULL,
  item bigint NOT NULL REFERENCES catalog.item,
  lot bigint REFERENCES materials.lot,
  position bigint REFERENCES catalog.position,
  quantity numeric CHECK (quantity > 0),
  unit_of_measure text,
  PRIMARY KEY (entry, ordinal),
  CHECK ((quantity IS NULL) = (unit_of_measure IS NULL))
);
CREATE INDEX ON production.step_use (lot) WHERE lot IS NOT NULL;
CREATE INDEX ON production.step_use (position) WHERE position IS NOT NULL;
CREATE INDEX ON production.step_use (item) WHERE position IS NULL;
CALL ledger.keep_as_history('production.step_use');

CREATE TABLE production.step_value (
  entry bigint NOT NULL REFERENCES production.step,
  name text NOT NULL,
  value numeric NOT NULL,
  unit_of_measure text NOT NULL,
  PRIMARY KEY (entry, name)
);
CALL ledger.keep_as_history('production.step_value');

CREATE TABLE production.parent_position (
  id bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
  parent bigint NOT NULL REFERENCES production.unit,
  position text NOT NULL,
  UNIQUE (parent, position)
);
COMMENT ON TABLE production.parent_position IS 'every position of a unit that was ever named';

CREATE TABLE production.installation (
  entry bigint PRIMARY KEY REFERENCES ledger.entry,
  ordinal bigint GENERATED ALWAYS AS IDENTITY UNIQUE,
  child_unit bigint REFERENCES production.unit,
  child_lot bigint REFERENCES materials.lot,
  quantity numeric CHECK (quantity > 0),
  unit_of_measure text,
  parent_position bigint NOT NULL REFERENCES production.parent_position,
  station bigint REFERENCES catalog.station,
  installed_at timestamptz NOT NULL,
  CHECK ((child_unit IS NULL) <> (child_lot IS NULL)),
  CHECK ((quantity IS NULL) = (unit_of_measure IS NULL))
);
COMMENT ON COLUMN production.installation.ordinal IS 'drawn while child and parent are locked: the order in which
installations of the same things were recorded';
CREATE INDEX ON production.installation (child_unit) WHERE child_unit IS NOT NULL;
CREATE INDEX ON production.installation (child_lot) WHERE child_lot IS NOT NULL;
CREATE INDEX ON production.installation (parent_position);
CALL ledger.keep_as_history('production.installation');

CREATE TABLE production.removal (
  entry bigint PRIMARY KEY REFERENCES ledger.entry,
  child_unit bigint REFERENCES production.unit,
  child_lot bigint REFERENCES materials.lot,
  parent bigint NOT NULL REFERENCES production.unit,
  parent_position bigint REFERENCES production.parent_position,
  station bigint REFERENCES catalog.station,
  removed_at timestamptz NOT NULL,
  CHECK ((child_unit IS NULL) <> (child_lot IS NULL))
);
CREATE INDEX ON production.removal (child_unit) WHERE child_unit IS NOT NULL;
CREATE INDEX ON production.removal (child_lot) WHERE child_lot IS NOT NULL;
CREATE INDEX ON production.removal (parent);
CALL ledger.keep_as_history('production.removal');

CREATE TABLE production.shipment (
  entry bigint PRIMARY KEY REFERENCES ledger.entry,
  number text NOT NULL,
  consignee text NOT NULL,
  shipped_at timestamptz NOT NULL
);
CALL ledger.keep_as_history('production.shipment');

CREATE TABLE production.shipment_unit (
  entry bigint NOT NULL REFERENCES production.shipment,
  unit bigint NOT NULL REFERENCES production.unit,
  PRIMARY KEY (entry, unit)
);
CREATE INDEX ON production.shipment_unit (unit);
CALL ledger.keep_as_history('production.shipment_unit');

CREATE TABLE production.unit_return (
  entry bigint NOT NULL REFERENCES ledger.entry,
  unit bigint NOT NULL REFERENCES production.unit,
  consignee text NOT NULL,
  returned_at timestamptz NOT NULL,
  PRIMARY KEY (entry, unit)
);
CREATE INDEX ON production.unit_return (unit);
CALL ledger.keep_as_history('production.unit_return');

-- State: what sits in which position of which parent; rebuilt from history at any time. A stay that contradicts one
-- recorded before it is kept apart, not applied, until a person settles it.
CREATE TABLE production.stay (
  entry bigint PRIMARY KEY REFERENCES production.installation,
  child_unit bigint REFERENCES production.unit,
  child_lot bigint REFERENCES materials.lot,
  parent_position bigint NOT NULL REFERENCES production.parent_position,
  during tstzrange NOT NULL,
  applied boolean NOT NULL,
  CHECK ((child_unit IS NULL) <> (child_lot IS NULL)),
  CONSTRAINT one_parent_at_a_time
    EXCLUDE USING gist (int8range(child_unit, child_unit, '[]') WITH &&, during WITH &&)
    WHERE (applied AND child_unit IS NOT NULL),
  CONSTRAINT one_child_in_a_position_at_a_time
    EXCLUDE USING gist (int8range(parent_position, parent_position, '[]') WITH &&, during WITH &&)
    WHERE (applied)
);
CREATE INDEX ON production.stay (child_unit);
CREATE INDEX ON production.stay (parent_position);

-- What the history says of stays: an installation ends at the first removal of that child from that parent behind it.
CREATE VIEW production.ended_installation AS
SELECT i.entry, i.ordinal, i.child_unit, i.child_lot, i.parent_position,
  tstzrange(i.installed_at, (
    SELECT min(r.removed_at)
    FROM production.removal r JOIN production.parent_position p ON p.id = i.parent_position
    WHERE (r.child_unit = i.child_unit OR r.child_lot = i.child_lot) AND r.parent = p.parent
      AND coalesce(r.parent_position, i.parent_position) = i.parent_position
      AND (r.removed_at > i.installed_at OR r.removed_at = i.installed_at AND r.entry > i.entry)
      AND NOT EXISTS (SELECT FROM ledger.withdrawal w WHERE w.target = r.entry)), '[)') AS during
FROM production.installation i
WHERE NOT EXISTS (SELECT FROM ledger.withdrawal w WHERE w.target = i.entry);

CREATE VIEW production.staying AS
SELECT s.entry, s.child_unit, s.child_lot, s.parent_position, s.during,
  NOT EXISTS (
    SELECT FROM production.ended_installation e
    WHERE e.ordinal < s.ordinal AND e.child_unit = s.child_unit AND e.during && s.during)
  AND NOT EXISTS (
    SELECT FROM production.ended_installation e
    WHERE e.ordinal < s.ordinal AND e.parent_position = s.parent_position AND e.during && s.during) AS applied
FROM production.ended_installation s;
