-- The longest step of a station bounds which steps may have been going on when something was taken off there.
CREATE INDEX ON production.step (station, (ended_at - started_at));
