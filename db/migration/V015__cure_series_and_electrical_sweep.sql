CREATE TABLE cure.series (
  entry bigint NOT NULL REFERENCES cure.run_record,
  ordinal integer NOT NULL,
  sensor text NOT NULL,
  position text,
  quantity text NOT NULL CHECK (quantity IN ('TEMPERATURE', 'IRRADIANCE', 'HUMIDITY')),
  unit_of_measure text NOT NULL,
  seconds numeric[] NOT NULL,
  readings numeric[] NOT NULL,
  PRIMARY KEY (entry, ordinal),
  CHECK (cardinality(seconds) > 0 AND cardinality(seconds) = cardinality(readings))
);
COMMENT ON TABLE cure.series IS 'what one sensor measured during a run, at seconds after its start';
CALL ledger.keep_as_history('cure.series');

CREATE TABLE electrical.sweep (
  entry bigint NOT NULL REFERENCES electrical.run_record,
  ordinal integer NOT NULL,
  name text NOT NULL,
  irradiance numeric CHECK (irradiance >= 0),
  cell_temperature numeric,
  volts numeric[] NOT NULL,
  amperes numeric[] NOT NULL,
  PRIMARY KEY (entry, ordinal),
  CHECK (cardinality(volts) > 0 AND cardinality(volts) = cardinality(amperes))
);
COMMENT ON TABLE electrical.sweep IS 'raw points of current and voltage, in W/m2 and degrees Celsius where stated';
CALL ledger.keep_as_history('electrical.sweep');
