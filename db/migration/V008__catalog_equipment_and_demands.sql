-- What an operation demands beside material, and what it reaches.
ALTER TABLE catalog.route_operation ADD COLUMN unit_alone boolean NOT NULL DEFAULT false;
COMMENT ON COLUMN catalog.route_operation.unit_alone IS 'released to act on the named unit only, not on what is inside it or around it';

CREATE TABLE catalog.route_alternate (
  entry bigint NOT NULL,
  operation text NOT NULL,
  item bigint NOT NULL,
  alternate bigint NOT NULL REFERENCES catalog.item,
  PRIMARY KEY (entry, operation, item, alternate),
  FOREIGN KEY (entry, operation, item) REFERENCES catalog.route_consumption,
  CHECK (item <> alternate)
);
COMMENT ON TABLE catalog.route_alternate IS 'items approved to be taken in instead of the one that is consumed';
CALL ledger.keep_as_history('catalog.route_alternate');

CREATE TABLE catalog.recipe (
  id bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
  code text NOT NULL UNIQUE
);

CREATE TABLE catalog.recipe_revision (
  entry bigint PRIMARY KEY REFERENCES ledger.entry,
  recipe bigint NOT NULL REFERENCES catalog.recipe,
  revision text NOT NULL,
  name text NOT NULL,
  effective_at timestamptz NOT NULL,
  UNIQUE (recipe, revision)
);
CALL ledger.keep_as_history('catalog.recipe_revision');

CREATE TABLE catalog.specification (
  id bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
  code text NOT NULL UNIQUE
);

CREATE TABLE catalog.specification_revision (
  entry bigint PRIMARY KEY REFERENCES ledger.entry,
  specification bigint NOT NULL REFERENCES catalog.specification,
  revision text NOT NULL,
  name text NOT NULL,
  effective_at timestamptz NOT NULL,
  UNIQUE (specification, revision)
);
CALL ledger.keep_as_history('catalog.specification_revision');

CREATE TABLE catalog.route_demand (
  entry bigint NOT NULL,
  operation text NOT NULL,
  recipe bigint REFERENCES catalog.recipe,
  specification bigint REFERENCES catalog.specification,
  FOREIGN KEY (entry, operation) REFERENCES catalog.route_operation,
  UNIQUE NULLS NOT DISTINCT (entry, operation, recipe, specification),
  CHECK ((recipe IS NULL) <> (specification IS NULL))
);
COMMENT ON TABLE catalog.route_demand IS 'cures and tests that an operation demands';
CALL ledger.keep_as_history('catalog.route_demand');

CREATE TABLE catalog.equipment (
  id bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
  code text NOT NULL UNIQUE
);

CREATE TABLE catalog.equipment_revision (
  entry bigint PRIMARY KEY REFERENCES ledger.entry,
  equipment bigint NOT NULL REFERENCES catalog.equipment,
  revision text NOT NULL,
  name text NOT NULL,
  station bigint REFERENCES catalog.station,
  effective_at timestamptz NOT NULL,
  UNIQUE (equipment, revision)
);
COMMENT ON COLUMN catalog.equipment_revision.station IS 'the station whose clock tells its times, if it stands at one';
CALL ledger.keep_as_history('catalog.equipment_revision');

CREATE TABLE catalog.equipment_check (
  entry bigint PRIMARY KEY REFERENCES ledger.entry,
  equipment bigint NOT NULL REFERENCES catalog.equipment,
  way text NOT NULL CHECK (way IN ('CALIBRATION', 'VERIFICATION')),
  specification bigint REFERENCES catalog.specification,
  verdict text NOT NULL CHECK (verdict IN ('GOOD', 'BAD')),
  evidence text NOT NULL,
  checked_at timestamptz NOT NULL
);
COMMENT ON COLUMN catalog.equipment_check.specification IS 'what was measured by it; a fault is seen by checks under a specification able to see it';
CREATE INDEX ON catalog.equipment_check (equipment, checked_at);
CALL ledger.keep_as_history('catalog.equipment_check');

CREATE TABLE catalog.fault (
  id bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
  code text NOT NULL UNIQUE
);

CREATE TABLE catalog.fault_revision (
  entry bigint PRIMARY KEY REFERENCES ledger.entry,
  fault bigint NOT NULL REFERENCES catalog.fault,
  revision text NOT NULL,
  name text NOT NULL,
  effective_at timestamptz NOT NULL,
  UNIQUE (fault, revision)
);
CALL ledger.keep_as_history('catalog.fault_revision');

CREATE TABLE catalog.fault_test (
  entry bigint NOT NULL REFERENCES catalog.fault_revision,
  specification bigint NOT NULL REFERENCES catalog.specification,
  PRIMARY KEY (entry, specification)
);
COMMENT ON TABLE catalog.fault_test IS 'the tests able to see a fault';
CALL ledger.keep_as_history('catalog.fault_test');

-- What is released about positions of a station.
CREATE TABLE catalog.position_carry_over (
  entry bigint NOT NULL REFERENCES catalog.station_revision,
  position bigint NOT NULL REFERENCES catalog.position,
  uses integer NOT NULL CHECK (uses >= 0),
  evidence text NOT NULL,
  PRIMARY KEY (entry, position)
);
COMMENT ON COLUMN catalog.position_carry_over.uses IS 'uses after a change until nothing of the lot before is left';
CALL ledger.keep_as_history('catalog.position_carry_over');

CREATE TABLE catalog.position_mixing_back (
  entry bigint NOT NULL REFERENCES catalog.station_revision,
  position bigint NOT NULL REFERENCES catalog.position,
  PRIMARY KEY (entry, position)
);
COMMENT ON TABLE catalog.position_mixing_back IS 'positions such as tanks whose content mixes: what is unloaded goes on as a new lot';
CALL ledger.keep_as_history('catalog.position_mixing_back');
