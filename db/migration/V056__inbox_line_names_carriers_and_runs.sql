ALTER TABLE inbox.line_name DROP CONSTRAINT line_name_kind_check,
  ADD CONSTRAINT line_name_kind_check
    CHECK (kind IN ('unit', 'lot', 'position', 'container', 'carrier', 'run'));
