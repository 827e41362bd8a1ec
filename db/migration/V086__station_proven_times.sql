-- What contacts prove of the time of a scan that the clock of a device dates.
ALTER TABLE station.page ADD COLUMN nothing_kept_at timestamptz;
COMMENT ON COLUMN station.page.nothing_kept_at IS 'by the server''s clock, when the page last had nothing that it kept; absent if it never told';
ALTER TABLE station.scan ADD COLUMN earliest timestamptz;
COMMENT ON COLUMN station.scan.earliest IS 'it surely was not scanned before; absent if nothing proves that';
