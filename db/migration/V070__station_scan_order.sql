-- Where a scan stands in the order of its page, which counts its scans; absent where no page counted.
ALTER TABLE station.scan ADD COLUMN page uuid, ADD COLUMN sequence bigint,
  ADD CHECK ((page IS NULL) = (sequence IS NULL));
CREATE INDEX ON station.scan (page, sequence) WHERE page IS NOT NULL;
