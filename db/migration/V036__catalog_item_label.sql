ALTER TABLE catalog.item_revision ADD COLUMN serial_pattern text;
COMMENT ON COLUMN catalog.item_revision.serial_pattern IS '# a digit, @ a letter A to Z, ? either, all else itself';

CREATE TABLE catalog.item_label_number (
  entry bigint NOT NULL REFERENCES catalog.item_revision,
  item bigint NOT NULL REFERENCES catalog.item,
  number text NOT NULL,
  PRIMARY KEY (entry, number)
);
COMMENT ON TABLE catalog.item_label_number IS 'numbers of others for an item, as labels of suppliers hold them';
CREATE INDEX ON catalog.item_label_number (number);
CALL ledger.keep_as_history('catalog.item_label_number');
