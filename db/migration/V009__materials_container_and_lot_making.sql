CREATE TABLE materials.container (
  id bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
  label text NOT NULL UNIQUE
);
COMMENT ON TABLE materials.container IS 'every container label ever named, filled or not';

-- A container got content of a lot: at receipt, by filling, thawing or topping up.
CREATE TABLE materials.container_filling (
  entry bigint NOT NULL REFERENCES ledger.entry,
  container bigint NOT NULL REFERENCES materials.container,
  lot bigint NOT NULL REFERENCES materials.lot,
  quantity numeric CHECK (quantity > 0),
  unit_of_measure text,
  filled_at timestamptz NOT NULL,
  PRIMARY KEY (entry, container),
  CHECK ((quantity IS NULL) = (unit_of_measure IS NULL))
);
CREATE INDEX ON materials.container_filling (container);
CREATE INDEX ON materials.container_filling (lot);
CALL ledger.keep_as_history('materials.container_filling');

-- A lot made here from other lots, or from what was taken out of units or positions.
CREATE TABLE materials.lot_making (
  entry bigint NOT NULL REFERENCES ledger.entry,
  lot bigint NOT NULL REFERENCES materials.lot,
  way text NOT NULL CHECK (way IN ('BLEND', 'TOP_UP', 'KIT', 'SPLIT', 'MERGE', 'REGRADE', 'RELABEL', 'RECOVERY', 'UNLOADING')),
  item bigint REFERENCES catalog.item,
  quantity numeric CHECK (quantity > 0),
  unit_of_measure text,
  expires_at timestamptz,
  station bigint REFERENCES catalog.station,
  made_at timestamptz NOT NULL,
  PRIMARY KEY (entry, lot),
  CHECK ((quantity IS NULL) = (unit_of_measure IS NULL))
);
COMMENT ON COLUMN materials.lot_making.item IS 'absent where the record does not tell it';
CREATE INDEX ON materials.lot_making (lot);
CREATE INDEX ON materials.lot_making (item, made_at);
CALL ledger.keep_as_history('materials.lot_making');

CREATE TABLE materials.lot_component (
  entry bigint NOT NULL,
  lot bigint NOT NULL,
  ordinal integer NOT NULL,
  component bigint NOT NULL REFERENCES materials.lot,
  container bigint REFERENCES materials.container,
  quantity numeric CHECK (quantity > 0),
  unit_of_measure text,
  PRIMARY KEY (entry, lot, ordinal),
  FOREIGN KEY (entry, lot) REFERENCES materials.lot_making,
  CHECK ((quantity IS NULL) = (unit_of_measure IS NULL))
);
COMMENT ON COLUMN materials.lot_component.container IS 'the container the component came from, where it was scanned';
CREATE INDEX ON materials.lot_component (component);
CREATE INDEX ON materials.lot_component (container) WHERE container IS NOT NULL;
CREATE INDEX ON materials.lot_component (lot);
CALL ledger.keep_as_history('materials.lot_component');

-- Where the item and the beginning of a lot are recorded.
CREATE VIEW materials.lot_origin AS
SELECT entry, lot, item, received_at AS at, quantity, unit_of_measure, expires_at FROM materials.receipt
UNION ALL
SELECT entry, lot, item, made_at, quantity, unit_of_measure, expires_at FROM materials.lot_making;

ALTER TABLE materials.charge ADD COLUMN container bigint REFERENCES materials.container;
CREATE INDEX ON materials.charge (container) WHERE container IS NOT NULL;
ALTER TABLE materials.discharge ADD COLUMN into_lot bigint REFERENCES materials.lot;
COMMENT ON COLUMN materials.discharge.into_lot IS 'the new lot as which the content of a position that mixes goes on';
CREATE INDEX ON materials.discharge (into_lot) WHERE into_lot IS NOT NULL;

-- Nothing of a lot, or of one of its containers, is in the plant any more.
CREATE TABLE materials.lot_ending (
  entry bigint PRIMARY KEY REFERENCES ledger.entry,
  lot bigint NOT NULL REFERENCES materials.lot,
  container bigint REFERENCES materials.container,
  why text NOT NULL CHECK (why IN ('USED_UP', 'SCRAPPED', 'RETURNED')),
  quantity numeric CHECK (quantity > 0),
  unit_of_measure text,
  ended_at timestamptz NOT NULL,
  CHECK ((quantity IS NULL) = (unit_of_measure IS NULL))
);
CREATE INDEX ON materials.lot_ending (lot);
CALL ledger.keep_as_history('materials.lot_ending');

CREATE TABLE materials.stock_change (
  entry bigint PRIMARY KEY REFERENCES ledger.entry,
  lot bigint NOT NULL REFERENCES materials.lot,
  container bigint REFERENCES materials.container,
  way text NOT NULL CHECK (way IN ('COUNT', 'ISSUE', 'STOCK_RETURN', 'WASTE', 'SAMPLE')),
  quantity numeric NOT NULL CHECK (quantity >= 0),
  unit_of_measure text NOT NULL,
  place text,
  why text,
  changed_at timestamptz NOT NULL
);
CREATE INDEX ON materials.stock_change (lot);
CALL ledger.keep_as_history('materials.stock_change');

CREATE TABLE materials.container_opening (
  entry bigint PRIMARY KEY REFERENCES ledger.entry,
  container bigint NOT NULL REFERENCES materials.container,
  opened_at timestamptz NOT NULL
);
CREATE INDEX ON materials.container_opening (container);
CALL ledger.keep_as_history('materials.container_opening');

CREATE TABLE materials.container_move (
  entry bigint PRIMARY KEY REFERENCES ledger.entry,
  container bigint NOT NULL REFERENCES materials.container,
  place text NOT NULL,
  storage text NOT NULL CHECK (storage IN ('FROZEN', 'COOLED', 'ROOM')),
  moved_at timestamptz NOT NULL
);
CREATE INDEX ON materials.container_move (container, moved_at);
CALL ledger.keep_as_history('materials.container_move');

CREATE TABLE materials.attachment (
  entry bigint PRIMARY KEY REFERENCES ledger.entry,
  sha256 text NOT NULL CHECK (sha256 ~ '^[0-9a-f]{64}$'),
  name text NOT NULL,
  media_type text NOT NULL,
  content bytea NOT NULL,
  lot bigint REFERENCES materials.lot
);
CREATE INDEX ON materials.attachment (sha256);
CREATE INDEX ON materials.attachment (lot) WHERE lot IS NOT NULL;
CALL ledger.keep_as_history('materials.attachment');

CREATE TABLE materials.incoming_release (
  entry bigint PRIMARY KEY REFERENCES ledger.entry,
  lot bigint NOT NULL REFERENCES materials.lot,
  verdict text NOT NULL CHECK (verdict IN ('RELEASED', 'REJECTED')),
  inspected text NOT NULL,
  released_at timestamptz NOT NULL
);
CREATE INDEX ON materials.incoming_release (lot);
CALL ledger.keep_as_history('materials.incoming_release');

CREATE TABLE materials.incoming_certificate (
  entry bigint NOT NULL REFERENCES materials.incoming_release,
  sha256 text NOT NULL CHECK (sha256 ~ '^[0-9a-f]{64}$'),
  PRIMARY KEY (entry, sha256)
);
CALL ledger.keep_as_history('materials.incoming_certificate');

-- A kept line may name containers too.
ALTER TABLE inbox.line_name DROP CONSTRAINT line_name_kind_check,
  ADD CONSTRAINT line_name_kind_check CHECK (kind IN ('unit', 'lot', 'position', 'container'));
