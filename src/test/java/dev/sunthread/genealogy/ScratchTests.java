package dev.sunthread.genealogy;

import dev.sunthread.simulator.told.Fault;
import dev.sunthread.simulator.told.Rates;
import org.junit.jupiter.api.Test;

class ScratchTests {
    @Test
    void run() {
        int n = Integer.getInteger("n", 100);
        String only = System.getProperty("fault", "");
        if (only.isEmpty() || only.equals("NONE")) report("NONE", Rates.NONE, n);
        for (Fault fault : Fault.values()) {
            if (only.isEmpty() || only.equals(fault.name())) {
                report(fault.name(), Rates.NONE.with(fault, 0.3), n);
                report(
                        fault.name() + "+scan",
                        Rates.NONE.with(Fault.LOST_LOT_SCAN, 0.5).with(fault, 0.3),
                        n);
            }
        }
    }

    void report(String name, Rates rates, int n) {
        long t = System.nanoTime();
        Tally tally;
        try {
            tally = SimulationCheck.of(rates, Long.getLong("seed", 0), n);
        } catch (RuntimeException e) {
            System.out.println(name + " FAILED " + e);
            java.util.Arrays.stream(e.getStackTrace()).limit(6).forEach(f -> System.out.println("     " + f));
            return;
        }
        System.out.printf(
                "%-30s %d plants true %d missed %d excess %s ms/plant %.1f%n",
                name, tally.plants, tally.truePairs, tally.missed, tally.excess, (System.nanoTime() - t) / 1e6 / n);
        tally.misses.stream().limit(4).forEach(m -> System.out.println("   miss " + m));
        tally.lies.stream().limit(3).forEach(m -> System.out.println("   lie " + m));
    }
}
