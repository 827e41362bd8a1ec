CREATE SCHEMA cure;

CREATE TABLE cure.run (
  id bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
  number text NOT NULL UNIQUE
);
COMMENT ON TABLE cure.run IS 'every cure run ever named';

CREATE TABLE cure.run_record (
  entry bigint PRIMARY KEY REFERENCES ledger.entry,
  run bigint NOT NULL REFERENCES cure.run,
  recipe bigint NOT NULL REFERENCES catalog.recipe,
  equipment bigint NOT NULL REFERENCES catalog.equipment,
  started_at timestamptz NOT NULL,
  ended_at timestamptz NOT NULL,
  CHECK (ended_at >= started_at)
);
CREATE INDEX ON cure.run_record (run);
CREATE INDEX ON cure.run_record (equipment, started_at);
CREATE INDEX ON cure.run_record (recipe, started_at);
CALL ledger.keep_as_history('cure.run_record');

CREATE TABLE cure.run_unit (
  entry bigint NOT NULL REFERENCES cure.run_record,
  unit bigint NOT NULL REFERENCES production.unit,
  position text,
  PRIMARY KEY (entry, unit)
);
CREATE INDEX ON cure.run_unit (unit);
CALL ledger.keep_as_history('cure.run_unit');

CREATE TABLE cure.run_carrier (
  entry bigint NOT NULL REFERENCES cure.run_record,
  carrier bigint NOT NULL REFERENCES production.carrier,
  position text,
  PRIMARY KEY (entry, carrier)
);
CREATE INDEX ON cure.run_carrier (carrier);
CALL ledger.keep_as_history('cure.run_carrier');

CREATE SCHEMA electrical;

CREATE TABLE electrical.run (
  id bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
  number text NOT NULL UNIQUE
);
COMMENT ON TABLE electrical.run IS 'every test run ever named';

CREATE TABLE electrical.run_record (
  entry bigint PRIMARY KEY REFERENCES ledger.entry,
  run bigint NOT NULL REFERENCES electrical.run,
  unit bigint NOT NULL REFERENCES production.unit,
  specification bigint NOT NULL REFERENCES catalog.specification,
  equipment bigint NOT NULL REFERENCES catalog.equipment,
  started_at timestamptz NOT NULL,
  ended_at timestamptz NOT NULL,
  verdict text NOT NULL CHECK (verdict IN ('PASS', 'FAIL', 'INVALID')),
  CHECK (ended_at >= started_at)
);
CREATE INDEX ON electrical.run_record (run);
CREATE INDEX ON electrical.run_record (unit);
CREATE INDEX ON electrical.run_record (equipment, started_at);
CREATE INDEX ON electrical.run_record (specification, started_at);
CALL ledger.keep_as_history('electrical.run_record');

CREATE SCHEMA quality;

-- A signed statement that something demanded was not done to a unit, or is not in a lot.
CREATE TABLE quality.deviation (
  entry bigint PRIMARY KEY REFERENCES ledger.entry,
  unit bigint REFERENCES production.unit,
  lot bigint REFERENCES materials.lot,
  operation text,
  position text,
  item bigint REFERENCES catalog.item,
  recipe bigint REFERENCES catalog.recipe,
  specification bigint REFERENCES catalog.specification,
  why text NOT NULL,
  CHECK ((unit IS NULL) <> (lot IS NULL)),
  CHECK (num_nonnulls(item, recipe, specification) = 1)
);
CREATE INDEX ON quality.deviation (unit) WHERE unit IS NOT NULL;
CREATE INDEX ON quality.deviation (lot) WHERE lot IS NOT NULL;
CALL ledger.keep_as_history('quality.deviation');
