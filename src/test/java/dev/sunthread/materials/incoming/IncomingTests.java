package dev.sunthread.materials.incoming;

import static dev.sunthread.materials.Store.broken;
import static dev.sunthread.materials.incoming.LotStatus.ENDED;
import static dev.sunthread.materials.incoming.LotStatus.EXPIRED;
import static dev.sunthread.materials.incoming.LotStatus.MADE_HERE;
import static dev.sunthread.materials.incoming.LotStatus.ON_HOLD;
import static dev.sunthread.materials.incoming.LotStatus.REJECTED;
import static dev.sunthread.materials.incoming.LotStatus.RELEASED;
import static dev.sunthread.materials.incoming.LotStatus.UNKNOWN_ORIGIN;
import static dev.sunthread.materials.incoming.LotStatus.WAITING_FOR_RELEASE;
import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.ledger.Acceptance;
import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.Sealer;
import dev.sunthread.materials.Lots;
import dev.sunthread.materials.Store;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** Incoming releases, and the status of a lot as known at a cut-off. */
@SunthreadTest
class IncomingTests {

    private static final String UNATTACHED = "ab".repeat(32);

    @Autowired
    Door door;

    @Autowired
    Sealer sealer;

    @Autowired
    Lots lots;

    @Autowired
    LotStatuses statuses;

    @Autowired
    IncomingReleases releases;

    Store store;

    @BeforeEach
    void stocked() {
        store = Store.stocked(door);
    }

    @Test
    void receivedLotWaitsUntilItIsReleased() {
        assertThat(status("A")).containsExactly(WAITING_FOR_RELEASE);
        long before = sealer.seal();
        assertThat(broken(verdict("08:00", "A", "released"))).isEmpty();
        assertThat(status("A")).containsExactly(RELEASED);
        assertThat(statuses.of(lot("A"), Plant.at("12:00"), before)).containsExactly(WAITING_FOR_RELEASE);
    }

    @Test
    void rejectedLotIsHeldInTheSameEntry() {
        verdict("08:00", "A", "rejected");
        String rejection = store.plant.lastId();
        assertThat(status("A")).containsExactly(REJECTED, ON_HOLD);
        assertThat(store.refusal("charge", "09:00", Map.of("lot", "A", "station", "BOND", "position", "V1")))
                .isEqualTo("Lot A is on hold: Rejected when it came in: looked over");
        store.plant.undo("10:00", rejection);
        assertThat(status("A")).containsExactly(WAITING_FOR_RELEASE);
    }

    @Test
    void laterReleaseCountsAndLeavesTheHoldToItsOwnRelease() {
        verdict("08:00", "A", "rejected");
        String rejection = store.plant.lastId();
        verdict("09:00", "A", "released");
        assertThat(status("A")).containsExactly(RELEASED, ON_HOLD);
        store.plant.say("hold-release", "09:10", Map.of("entry", rejection, "hold", 1, "why", "measured again"));
        assertThat(status("A")).containsExactly(RELEASED);
        assertThat(releases.of(lot("A"), sealer.seal()))
                .extracting(IncomingRelease::verdict)
                .containsExactly(Verdict.RELEASED, Verdict.REJECTED);
    }

    @Test
    void releaseRestsOnCertificatesThatAreAttached() {
        var body = Store.with(release("A", "released"), "certificates", List.of(UNATTACHED));
        assertThat(store.refusal("incoming-release", "08:00", body)).startsWith("No attached document has the SHA-256");
        assertThat(broken(store.plant.say("incoming-release", "08:00", body)))
                .containsExactly("certificate-is-attached");
    }

    @Test
    void madeLotWaitsForNoRelease() {
        store.blend("08:00", "M", "A", "B");
        assertThat(status("M")).containsExactly(MADE_HERE);
    }

    @Test
    void unknownHeldExpiredAndEndedLotsSaySo() {
        store.plant.say(
                "blend", "08:00", Store.with(Store.blended("M", "C"), "expiresAt", "2026-03-10T12:00:00+01:00"));
        store.hold("08:10", "M");
        store.end("08:20", "M", "scrapped");
        assertThat(status("C")).containsExactly(UNKNOWN_ORIGIN);
        assertThat(status("M")).containsExactly(MADE_HERE, ON_HOLD, EXPIRED, ENDED);
        assertThat(statuses.of(lot("M"), Plant.at("11:59"), sealer.seal())).doesNotContain(EXPIRED);
    }

    private List<LotStatus> status(String number) {
        return statuses.of(lot(number), Plant.at("12:00"), sealer.seal());
    }

    private long lot(String number) {
        return lots.find(number).orElseThrow();
    }

    private Acceptance verdict(String time, String lot, String verdict) {
        return store.plant.say("incoming-release", time, release(lot, verdict));
    }

    private static Map<String, Object> release(String lot, String verdict) {
        return Map.of("lot", lot, "verdict", verdict, "inspected", "looked over");
    }
}
