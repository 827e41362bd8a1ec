CREATE SCHEMA materials;

CREATE TABLE materials.lot (
  id bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
  number text NOT NULL UNIQUE
);
COMMENT ON TABLE materials.lot IS 'every lot number ever named, received or not';

CREATE TABLE materials.receipt (
  entry bigint PRIMARY KEY REFERENCES ledger.entry,
  lot bigint NOT NULL REFERENCES materials.lot,
  item bigint NOT NULL REFERENCES catalog.item,
  received_at timestamptz NOT NULL,
  quantity numeric NOT NULL CHECK (quantity > 0),
  unit_of_measure text NOT NULL,
  supplier text,
  expires_at timestamptz
);
CREATE INDEX ON materials.receipt (lot);
CREATE INDEX ON materials.receipt (item, received_at);
CALL ledger.keep_as_history('materials.receipt');

CREATE TABLE materials.receipt_supplier_lot (
  entry bigint NOT NULL REFERENCES materials.receipt,
  supplier_lot text NOT NULL,
  PRIMARY KEY (entry, supplier_lot)
);
CREATE INDEX ON materials.receipt_supplier_lot (supplier_lot);
CALL ledger.keep_as_history('materials.receipt_supplier_lot');

CREATE TABLE materials.charge (
  entry bigint PRIMARY KEY REFERENCES ledger.entry,
  position bigint NOT NULL REFERENCES catalog.position,
  lot bigint NOT NULL REFERENCES materials.lot,
  charged_at timestamptz NOT NULL
);
CREATE INDEX ON materials.charge (position, charged_at);
CREATE INDEX ON materials.charge (lot);
CALL ledger.keep_as_history('materials.charge');

CREATE TABLE materials.discharge (
  entry bigint PRIMARY KEY REFERENCES ledger.entry,
  position bigint NOT NULL REFERENCES catalog.position,
  lot bigint REFERENCES materials.lot,
  discharged_at timestamptz NOT NULL
);
CREATE INDEX ON materials.discharge (position, discharged_at);
CREATE INDEX ON materials.discharge (lot) WHERE lot IS NOT NULL;
CALL ledger.keep_as_history('materials.discharge');

CREATE TABLE materials.clean_point (
  entry bigint PRIMARY KEY REFERENCES ledger.entry,
  position bigint NOT NULL REFERENCES catalog.position,
  cleaned_at timestamptz NOT NULL,
  evidence text NOT NULL
);
CREATE INDEX ON materials.clean_point (position, cleaned_at);
CALL ledger.keep_as_history('materials.clean_point');

-- State: what is loaded where, and since when; rebuilt from history at any time.
CREATE TABLE materials.loaded (
  entry bigint PRIMARY KEY REFERENCES materials.charge,
  position bigint NOT NULL REFERENCES catalog.position,
  lot bigint NOT NULL REFERENCES materials.lot,
  during tstzrange NOT NULL,
  CONSTRAINT one_lot_at_a_position_at_a_time
    EXCLUDE USING gist (int8range(position, position, '[]') WITH &&, during WITH &&)
);
CREATE INDEX ON materials.loaded (position, lower(during));
CREATE INDEX ON materials.loaded (lot);

-- What the history says is loaded: a charge ends at the first discharge behind it or at the next charge.
CREATE VIEW materials.loading AS
SELECT entry, position, lot, tstzrange(charged_at, least(replaced_at, emptied_at)) AS during
FROM (
  SELECT c.entry, c.position, c.lot, c.charged_at,
    lead(c.charged_at) OVER (PARTITION BY c.position ORDER BY c.charged_at, c.entry) AS replaced_at,
    (SELECT min(d.discharged_at) FROM materials.discharge d
     WHERE d.position = c.position AND d.discharged_at > c.charged_at
       AND NOT EXISTS (SELECT FROM ledger.withdrawal w WHERE w.target = d.entry)) AS emptied_at
  FROM materials.charge c
  WHERE NOT EXISTS (SELECT FROM ledger.withdrawal w WHERE w.target = c.entry)
) charges
WHERE charged_at < coalesce(least(replaced_at, emptied_at), 'infinity');
