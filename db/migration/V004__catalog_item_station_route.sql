CREATE SCHEMA catalog;

CREATE TABLE catalog.item (
  id bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
  number text NOT NULL UNIQUE,
  tracking text NOT NULL CHECK (tracking IN ('SERIAL', 'LOT', 'NONE')),
  level text,
  unit_of_measure text NOT NULL,
  CHECK ((tracking = 'SERIAL') = (level IS NOT NULL))
);

CREATE TABLE catalog.item_revision (
  entry bigint PRIMARY KEY REFERENCES ledger.entry,
  item bigint NOT NULL REFERENCES catalog.item,
  revision text NOT NULL,
  name text NOT NULL,
  UNIQUE (item, revision)
);
CALL ledger.keep_as_history('catalog.item_revision');

CREATE TABLE catalog.station (
  id bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
  code text NOT NULL UNIQUE
);

CREATE TABLE catalog.position (
  id bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
  station bigint NOT NULL REFERENCES catalog.station,
  code text NOT NULL,
  UNIQUE (station, code)
);

CREATE TABLE catalog.station_revision (
  entry bigint PRIMARY KEY REFERENCES ledger.entry,
  station bigint NOT NULL REFERENCES catalog.station,
  revision text NOT NULL,
  name text NOT NULL,
  effective_at timestamptz NOT NULL,
  clock_uncertainty numeric NOT NULL CHECK (clock_uncertainty >= 0),
  UNIQUE (station, revision)
);
COMMENT ON COLUMN catalog.station_revision.clock_uncertainty IS 'seconds by which a recorded time may be early or late';
CALL ledger.keep_as_history('catalog.station_revision');

CREATE TABLE catalog.structure_revision (
  entry bigint PRIMARY KEY REFERENCES ledger.entry,
  item bigint NOT NULL REFERENCES catalog.item,
  revision text NOT NULL,
  effective_at timestamptz NOT NULL,
  UNIQUE (item, revision)
);
CALL ledger.keep_as_history('catalog.structure_revision');

CREATE TABLE catalog.structure_position (
  entry bigint NOT NULL REFERENCES catalog.structure_revision,
  position text NOT NULL,
  item bigint NOT NULL REFERENCES catalog.item,
  PRIMARY KEY (entry, position, item)
);
COMMENT ON TABLE catalog.structure_position IS 'several items at one position are approved alternates';
CALL ledger.keep_as_history('catalog.structure_position');

CREATE TABLE catalog.route_revision (
  entry bigint PRIMARY KEY REFERENCES ledger.entry,
  item bigint NOT NULL REFERENCES catalog.item,
  revision text NOT NULL,
  effective_at timestamptz NOT NULL,
  UNIQUE (item, revision)
);
CALL ledger.keep_as_history('catalog.route_revision');

CREATE TABLE catalog.route_operation (
  entry bigint NOT NULL REFERENCES catalog.route_revision,
  sequence integer NOT NULL,
  operation text NOT NULL,
  name text NOT NULL,
  PRIMARY KEY (entry, operation),
  UNIQUE (entry, sequence)
);
CALL ledger.keep_as_history('catalog.route_operation');

CREATE TABLE catalog.route_consumption (
  entry bigint NOT NULL,
  operation text NOT NULL,
  item bigint NOT NULL REFERENCES catalog.item,
  PRIMARY KEY (entry, operation, item),
  FOREIGN KEY (entry, operation) REFERENCES catalog.route_operation
);
CALL ledger.keep_as_history('catalog.route_consumption');
