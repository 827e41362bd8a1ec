package dev.sunthread.production;

import dev.sunthread.ledger.Known;

/**
 * Conditions that join a row {@code c} of {@code production.carrying} to a row {@code x} of a carrier and a range of
 * time. A carrier is used for years, so they leave out by time what can't be there any more.
 */
public final class CarrierHistory {

    /** What was on the carrier in that time: loaded since everything was last taken off before it. */
    public static final String ON_IT = """
            c.carrier = x.carrier AND c.loaded_at <= coalesce(upper(x.during), 'infinity') AND c.during && x.during
            AND c.loaded_at >= coalesce((
              SELECT max(bo.unloaded_at) FROM production.carrier_unload bo
              WHERE bo.carrier = x.carrier AND bo.unit IS NULL AND bo.inner_carrier IS NULL
                AND bo.unloaded_at <= lower(x.during) AND %s), '-infinity')
            """.formatted(Known.now("bo.entry"));

    /** What the carrier itself was on in that time: its last load before it, and those in it. */
    public static final String AROUND_IT = """
            c.inner_carrier = x.carrier AND c.loaded_at <= coalesce(upper(x.during), 'infinity') AND c.during && x.during
            AND c.loaded_at >= coalesce((
              SELECT max(bl.loaded_at) FROM production.carrier_load bl
              WHERE bl.inner_carrier = x.carrier AND bl.loaded_at <= lower(x.during) AND %s), '-infinity')
            """.formatted(Known.now("bl.entry"));

    private CarrierHistory() {}
}
