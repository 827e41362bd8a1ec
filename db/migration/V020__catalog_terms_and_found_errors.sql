-- What released revisions state for computation, and what checks found wrong with equipment.
CREATE TABLE catalog.recipe_terms (
  entry bigint PRIMARY KEY REFERENCES catalog.recipe_revision,
  terms jsonb NOT NULL
);
COMMENT ON TABLE catalog.recipe_terms IS 'what a cure under a revision must have been like, as its envelope says it';
CALL ledger.keep_as_history('catalog.recipe_terms');

CREATE TABLE catalog.specification_terms (
  entry bigint PRIMARY KEY REFERENCES catalog.specification_revision,
  terms jsonb NOT NULL
);
COMMENT ON TABLE catalog.specification_terms IS 'what a test under a revision must show, as its envelope says it';
CALL ledger.keep_as_history('catalog.specification_terms');

CREATE TABLE catalog.check_error (
  entry bigint NOT NULL REFERENCES catalog.equipment_check,
  ordinal integer NOT NULL,
  sensor text,
  quantity text NOT NULL CHECK (quantity IN ('TEMPERATURE', 'IRRADIANCE', 'HUMIDITY', 'CURRENT', 'VOLTAGE')),
  offset_by numeric,
  percent numeric CHECK (percent > -100),
  onset text NOT NULL CHECK (onset IN ('UNKNOWN', 'ALWAYS')),
  PRIMARY KEY (entry, ordinal),
  CHECK ((offset_by IS NULL) <> (percent IS NULL))
);
COMMENT ON TABLE catalog.check_error IS 'by how much equipment was found to read above the truth';
COMMENT ON COLUMN catalog.check_error.onset IS 'whether it read so since the check before, or from some moment between on';
CALL ledger.keep_as_history('catalog.check_error');

CREATE TABLE catalog.check_radiometer (
  entry bigint PRIMARY KEY REFERENCES catalog.equipment_check,
  irradiance numeric NOT NULL CHECK (irradiance >= 0),
  band text,
  lamp_hours numeric CHECK (lamp_hours >= 0)
);
COMMENT ON TABLE catalog.check_radiometer IS 'irradiance in mW/cm2 where the bonds are';
CALL ledger.keep_as_history('catalog.check_radiometer');
