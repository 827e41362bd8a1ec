-- What an operation measures or sets, and from what to what that is good.
CREATE TABLE catalog.route_value (
  entry bigint NOT NULL,
  operation text NOT NULL,
  value text NOT NULL,
  unit_of_measure text NOT NULL,
  least numeric,
  most numeric,
  PRIMARY KEY (entry, operation, value),
  FOREIGN KEY (entry, operation) REFERENCES catalog.route_operation,
  CHECK (least IS NOT NULL OR most IS NOT NULL),
  CHECK (least <= most)
);
CALL ledger.keep_as_history('catalog.route_value');
CREATE INDEX ON production.step_value (name);
