package dev.sunthread.genealogy;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.simulator.told.Rates;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/** Writes how much the trace misses and how much too much it tells, by kind of fault, when it is asked to. */
@EnabledIfSystemProperty(named = "sunthread.docs.write", matches = "true")
class SimulationTableTests {

    private static final Path FILE = Path.of("src", "docs", "simulation.md");
    private static final int PLANTS = Integer.getInteger("sunthread.simulated", 100);
    private static final long SEED = Long.getLong("sunthread.seed", 0) * 1_000_000;

    @Test
    void writesTheTable() throws IOException {
        String written = Files.exists(FILE) ? Files.readString(FILE) : "";
        Files.writeString(
                FILE,
                INTRODUCTION.formatted(PLANTS, SEED / 1_000_000)
                        + table(FaultKinds.held())
                        + APART
                        + table(FaultKinds.apart()));
        assertThat(Files.readString(FILE)).isNotEqualTo(written);
    }

    private static String table(Map<String, Rates> kinds) {
        return HEAD
                + kinds.entrySet().stream()
                        .map(kind -> row(kind.getKey(), SimulationCheck.of(kind.getValue(), SEED, PLANTS)))
                        .collect(Collectors.joining());
    }

    private static String row(String kind, Tally tally) {
        return String.format(
                Locale.ROOT,
                "| %s | %,d | %,d | %,d | %,d | %,d | %,d |%n",
                kind,
                tally.plants,
                tally.truePairs,
                tally.missed,
                tally.excess(Certainty.CERTAIN),
                tally.excess(Certainty.POSSIBLE),
                tally.excess(Certainty.UNPROVEN));
    }

    private static final String HEAD = """
            | kind of fault | plants | true pairs | missed | falsely certain | too much: possible | too much: unproven |
            |---|---:|---:|---:|---:|---:|---:|
            """;

    private static final String INTRODUCTION = """
            # The trace against the truth

            A simulator (`dev.sunthread.simulator` in the test sources) moves matter through small random plants and records it
            as a plant does, with some records lost, late, skewed, doubled, voided or unreadable. The trace sees the records
            only. For every lot, container, cure run, test run and step of a plant, and everything it is in - ever, now, and at
            a random time - the answer is compared with what truly is in what; each such pair that is true counts once for each
            of the three times.

            *Missed* are true pairs that the answer leaves out. *Falsely certain* are pairs that are not true and told as
            certain; only false scans and false charges may cause them. *Too much* is what an inspection would find clean.
            Which rule tells how much of it, `ExcessTests` prints: `-Dtest=ExcessTests -Dsunthread.excess="lost step,voided scan"`.
            Each kind of fault strikes a record with a rate of 0.3 (doubled serials 0.2), while half of all uses have no lot
            scanned; *many at once* has every kind at 0.05. *Used by hand* and *changed in a row* are habits, not faults: some
            material is taken by hand where other lots are loaded, and material is changed in the middle of a row of units whose
            one step scans one lot.

            Made by

                mvn test -Dtests.jvm= -Dtest=SimulationTableTests -Dsunthread.docs.write=true -Dsunthread.simulated=%d -Dsunthread.seed=%d

            """;

    private static final String APART = """

            ## What no record tells

            Of these no rule that reads the records knows; they are counted apart. A lost charge is found where a scan shows
            the lot, or a use without a scan where nothing else is loaded; if the lot before was never recorded as taken off,
            a use without a scan shows nothing, and only quantities could show it.

            So it is with what was put on top. The smallest plant: lots A and B are received, some of B is poured into what is
            left of A, a unit is bonded with A. Without the record of the pouring, two receipts and a bond with A are left,
            word for word what a plant tells in which nothing was poured. Only that more was drawn from A than was received
            could show it, which the balance of a lot tells, not the trace.

            What was put in or taken out, and shown by nothing since, is known by nobody. The smallest plant of a removal:
            a receiver is recorded in a wall; it is taken out again, which is not told, and lies on a shelf. Nothing speaks
            against its still being there, so it is told as in there, falsely certain; nothing is missed. The smallest plant
            of an installation: a wall has left its last operation and is recorded no more; one receiver of it is taken out
            and another put in, neither told. No operation, installation or shipment since asks what is in the wall.

            So with a lot of which no record says anything: material of a unit that was recovered, used and used up
            without one scan of its lot.

            """;
}
