package dev.sunthread.production;

import static dev.sunthread.testing.Workshop.unit;
import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.kernel.RuleBroken;
import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.Envelope;
import dev.sunthread.ledger.Manner;
import dev.sunthread.testing.Interlock;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.testing.Workshop;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** Of two stations that do the same at once exactly one wins, and the other is told who did it, where and when. */
@SunthreadTest
class RaceTests {

    private static final String WHO = "by op-1 at test on 2026-03-10 at 09:00:00";

    @Autowired
    Door door;

    private Workshop workshop;

    @BeforeEach
    void released() {
        workshop = Workshop.released(door);
    }

    @RepeatedTest(5)
    void oneOfTwoStationsGivesASerial() throws Exception {
        Map<String, Object> birth = Map.of("units", List.of(unit("RCV R9")));
        assertThat(loser("birth", birth, birth).reason()).isEqualTo("Serial RCV R9 was given before, recorded " + WHO);
    }

    @RepeatedTest(5)
    void oneOfTwoStationsFillsAPosition() throws Exception {
        assertThat(loser("installation", put("RCV R1", "1"), put("RCV R2", "1")).reason())
                .matches("Position 1 of WALL W1 is recorded as holding unit RCV R[12] at that time, put there " + WHO);
    }

    @RepeatedTest(5)
    void oneOfTwoStationsTakesAUnit() throws Exception {
        assertThat(loser("installation", put("RCV R1", "1"), put("RCV R1", "2")).reason())
                .matches("Unit RCV R1 is recorded as being in position [12] of unit WALL W1 at that time, put there "
                        + WHO);
    }

    @Test
    void tellsWhoLoadedAPositionBefore() {
        workshop.plant().receipt("1 06:00", "A", "ADH");
        workshop.plant().charge("09:00", "A", "V1");
        assertThat(new Interlock(workshop.plant())
                        .of(
                                "position-is-discharged-before-the-next-charge",
                                "charge",
                                "09:10",
                                Map.of("lot", "A", "station", "BOND", "position", "V1"))
                        .sentence())
                .endsWith("recorded " + WHO);
    }

    private static Map<String, Object> put(String child, String position) {
        return Map.of("child", Map.of("unit", unit(child)), "parent", unit("WALL W1"), "position", position);
    }

    private RuleBroken loser(String kind, Map<String, Object> one, Map<String, Object> other) throws Exception {
        Envelope first = workshop.plant().envelope(kind, "09:00", one);
        Envelope second = workshop.plant().envelope(kind, "09:00", other);
        CyclicBarrier together = new CyclicBarrier(2);
        ExecutorService stations = Executors.newFixedThreadPool(2);
        try {
            Future<Optional<RuleBroken>> left = stations.submit(() -> refusal(together, first));
            Future<Optional<RuleBroken>> right = stations.submit(() -> refusal(together, second));
            List<RuleBroken> refused = List.of(left.get(), right.get()).stream()
                    .flatMap(Optional::stream)
                    .toList();
            assertThat(refused).hasSize(1);
            return refused.get(0);
        } finally {
            stations.shutdown();
        }
    }

    private Optional<RuleBroken> refusal(CyclicBarrier together, Envelope envelope) throws Exception {
        together.await();
        try {
            door.accept(envelope, Manner.DO);
            return Optional.empty();
        } catch (RuleBroken e) {
            return Optional.of(e);
        }
    }
}
