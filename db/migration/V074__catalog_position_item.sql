-- Which items a position of a station takes, by revision; a position that a revision states none for takes any.
CREATE TABLE catalog.position_item (
  entry bigint NOT NULL REFERENCES catalog.station_revision,
  position bigint NOT NULL REFERENCES catalog.position,
  item bigint NOT NULL REFERENCES catalog.item,
  PRIMARY KEY (entry, position, item)
);
CREATE INDEX ON catalog.position_item (position);
COMMENT ON TABLE catalog.position_item IS 'items that may be loaded at a position; none for any';
CALL ledger.keep_as_history('catalog.position_item');
