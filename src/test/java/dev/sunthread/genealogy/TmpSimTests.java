package dev.sunthread.genealogy;
import java.util.*;
import org.junit.jupiter.api.Test;
class TmpSimTests {
    @Test void run() {
        for (String kind : System.getProperty("kinds", "unreadable line").split(",")) {
            long t = System.nanoTime();
            Tally tally = SimulationCheck.of(FaultKinds.held().get(kind), Long.getLong("sunthread.seed", 3) * 1_000_000 + Long.getLong("from", 0), Integer.getInteger("sunthread.simulated", 40));
            System.out.println("SIM " + kind + " plants " + tally.plants + " true " + tally.truePairs + " missed " + tally.missed + " misses " + tally.misses + " lies " + tally.lies + " " + tally.excess + " s " + (System.nanoTime() - t) / 1_000_000_000);
        }
    }
}
