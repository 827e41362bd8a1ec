package dev.sunthread.genealogy;

import dev.sunthread.electrical.judging.TestVerdicts;
import dev.sunthread.kernel.Refused;
import dev.sunthread.ledger.Sealer;
import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/** Proposes from when to when something is suspect, with everything recorded now, each end with its reason. */
@Service
public class WindowProposals {

    private final Sealer sealer;
    private final JdbcClient jdbc;
    private final TestVerdicts tests;

    WindowProposals(Sealer sealer, JdbcClient jdbc, TestVerdicts tests) {
        this.sealer = sealer;
        this.jdbc = jdbc;
        this.tests = tests;
    }

    /**
     * For an oven, a lamp or a rig.
     *
     * @param fault what went wrong; without it any check that was good counts
     * @param noticed when it was noticed; without it the window stays open
     * @throws Refused if the equipment is not recorded
     */
    public ProposedWindow ofEquipment(String equipment, @Nullable String fault, @Nullable OffsetDateTime noticed) {
        return new Windows(jdbc, sealer.seal(), tests).ofEquipment(equipment, fault, noticed);
    }

    /** For a position of a station. @throws Refused if the station is not recorded */
    public ProposedWindow ofPosition(String station, String position, String fault, OffsetDateTime noticed) {
        return new Windows(jdbc, sealer.seal(), tests).ofPosition(station, position, fault, noticed);
    }
}
