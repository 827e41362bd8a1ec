-- Beside who says so, who handed it in: the person who was signed in, or the machine whose token was used.
ALTER TABLE ledger.entry ADD COLUMN recorded_by text;
