-- Where, when and by whom an operation may be done, and what to beware of.
ALTER TABLE catalog.route_operation ADD COLUMN qualified boolean NOT NULL DEFAULT false;
ALTER TABLE catalog.route_operation ADD COLUMN online_only boolean NOT NULL DEFAULT false;
COMMENT ON COLUMN catalog.route_operation.qualified IS 'whoever does it must be qualified for it';
COMMENT ON COLUMN catalog.route_operation.online_only IS 'not done while the station can not ask whether it may';

CREATE TABLE catalog.route_station (
  entry bigint NOT NULL,
  operation text NOT NULL,
  station bigint NOT NULL REFERENCES catalog.station,
  PRIMARY KEY (entry, operation, station),
  FOREIGN KEY (entry, operation) REFERENCES catalog.route_operation
);
COMMENT ON TABLE catalog.route_station IS 'stations where an operation may be done; any if none is named';
CALL ledger.keep_as_history('catalog.route_station');

CREATE TABLE catalog.route_window (
  entry bigint NOT NULL,
  operation text NOT NULL,
  after text NOT NULL,
  at_least integer CHECK (at_least > 0),
  at_most integer CHECK (at_most > 0),
  PRIMARY KEY (entry, operation, after),
  FOREIGN KEY (entry, operation) REFERENCES catalog.route_operation,
  FOREIGN KEY (entry, after) REFERENCES catalog.route_operation (entry, operation),
  CHECK (at_least IS NOT NULL OR at_most IS NOT NULL),
  CHECK (at_least <= at_most)
);
COMMENT ON TABLE catalog.route_window IS 'seconds from the end of an earlier operation to the start of this one';
CALL ledger.keep_as_history('catalog.route_window');

CREATE TABLE catalog.route_caution (
  entry bigint NOT NULL,
  operation text NOT NULL,
  caution text NOT NULL CHECK (caution IN ('UV', 'HEAT', 'VOLTAGE', 'CHEMICAL')),
  PRIMARY KEY (entry, operation, caution),
  FOREIGN KEY (entry, operation) REFERENCES catalog.route_operation
);
CALL ledger.keep_as_history('catalog.route_caution');

ALTER TABLE catalog.structure_position ADD COLUMN ordinal integer;
COMMENT ON COLUMN catalog.structure_position.ordinal IS 'the order in which it was written; absent if released before it was kept';

ALTER TABLE catalog.item_revision ADD COLUMN open_life integer CHECK (open_life > 0);
ALTER TABLE catalog.item_revision ADD COLUMN out_life integer CHECK (out_life > 0);
COMMENT ON COLUMN catalog.item_revision.open_life IS 'seconds for which an opened container of it may be used';
COMMENT ON COLUMN catalog.item_revision.out_life IS 'seconds for which a container of it may be at room temperature in all';
