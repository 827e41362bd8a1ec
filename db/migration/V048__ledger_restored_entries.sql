-- A restore makes many entries at once and fills them in their order; no other writer can have any of theirs in between.
CREATE OR REPLACE FUNCTION ledger.through_the_door() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF TG_OP <> 'INSERT' THEN
    RAISE EXCEPTION 'history is only appended to: % on %.% refused', TG_OP, TG_TABLE_SCHEMA, TG_TABLE_NAME;
  END IF;
  IF current_setting('sunthread.entry', true) IS DISTINCT FROM NEW.entry::text
      AND NOT NEW.entry <@ coalesce(nullif(current_setting('sunthread.restored', true), ''), 'empty')::int8range THEN
    RAISE EXCEPTION 'history is written through the door only: insert into %.% refused', TG_TABLE_SCHEMA, TG_TABLE_NAME;
  END IF;
  RETURN NEW;
END $$;
