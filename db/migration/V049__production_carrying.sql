-- The next unload is the first by time that is found, where all later ones of a carrier used to be read.
CREATE OR REPLACE VIEW production.carrying AS
SELECT l.entry, l.ordinal, l.carrier, l.unit, l.inner_carrier, l.position, l.loaded_at, tstzrange(l.loaded_at, (
    SELECT u.unloaded_at FROM production.carrier_unload u
    WHERE u.carrier = l.carrier
      AND (u.unit = l.unit OR u.inner_carrier = l.inner_carrier OR u.unit IS NULL AND u.inner_carrier IS NULL)
      AND u.unloaded_at >= l.loaded_at AND (u.unloaded_at > l.loaded_at OR u.entry > l.entry)
      AND NOT EXISTS (SELECT FROM ledger.withdrawal w WHERE w.target = u.entry)
    ORDER BY u.unloaded_at LIMIT 1), '[)') AS during
FROM production.carrier_load l
WHERE NOT EXISTS (SELECT FROM ledger.withdrawal w WHERE w.target = l.entry);
