package dev.sunthread.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import com.sun.management.ThreadMXBean;
import dev.sunthread.journal.LineOutcome.Outcome;
import dev.sunthread.testing.SunthreadTest;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Whatever a file holds, its valid lines are taken and the import comes to its end. */
@SunthreadTest
class HostileFileTests {

    private static final Sender SENDER = new Sender("import", "hostile");

    @Autowired
    Imports imports;

    @Autowired
    JdbcClient jdbc;

    private int said;

    /** A lot is held again and again below: it is known from the first time on. */
    @BeforeEach
    void knowsTheLot() throws IOException {
        imports.takeLine(valid("first"), SENDER);
    }

    @Test
    void takesNothingFromAnEmptyFileOrAByteOrderMark() throws IOException {
        assertThat(outcomes(Bytes.of(""))).isEmpty();
        assertThat(outcomes(Bytes.of("\uFEFF"))).isEmpty();
        assertThat(outcomes(Bytes.of("\r\n \t\r\n\n"))).isEmpty();
        assertThat(outcomes(Bytes.of("{\"journal\":1}"))).isEmpty();
    }

    @Test
    void readsByteOrderMarkCarriageReturnsAndALastLineWithoutEnd() throws IOException {
        String file = "\uFEFF{\"journal\":1}\r\n" + valid() + "\r\n\r\n" + valid();
        assertThat(outcomes(Bytes.of(file)))
                .extracting(LineOutcome::line, LineOutcome::outcome)
                .containsExactly(tuple(2, Outcome.ACCEPTED), tuple(4, Outcome.ACCEPTED));
    }

    @Test
    void takesALineOfHundredMegabytesInHalfOfItsMemory() throws IOException {
        outcomes(Bytes.of(valid()));
        InputStream file =
                Bytes.joined(Bytes.of(valid() + "\n"), Bytes.repeated('[', 100_000_000), Bytes.of("\n" + valid()));
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long before = threads.getCurrentThreadAllocatedBytes();
        List<LineOutcome> outcomes = outcomes(file);
        assertThat(threads.getCurrentThreadAllocatedBytes() - before).isLessThan(50_000_000);
        assertThat(outcomes)
                .extracting(LineOutcome::outcome)
                .containsExactly(Outcome.ACCEPTED, Outcome.KEPT_IN_INBOX, Outcome.ACCEPTED);
        assertThat(jdbc.sql("SELECT line_length FROM inbox.line")
                        .query(Long.class)
                        .single())
                .isEqualTo(100_000_000);
    }

    @Test
    void keepsStrangeLinesAndTakesTheValidOnesBetweenThem() throws IOException {
        Map<String, String> strange = StrangeLines.byWhatIsStrange(valid("x"));
        StringBuilder file = new StringBuilder(valid());
        strange.values()
                .forEach(line -> file.append('\n').append(line).append('\n').append(valid()));
        List<LineOutcome> outcomes = outcomes(Bytes.of(file.toString()));
        assertThat(outcomes).hasSize(2 * strange.size() + 1);
        for (int i = 0; i < outcomes.size(); i++) {
            assertThat(outcomes.get(i).outcome())
                    .as(List.copyOf(strange.keySet()).get(Math.min(i / 2, strange.size() - 1)))
                    .isEqualTo(i % 2 == 0 ? Outcome.ACCEPTED : Outcome.KEPT_IN_INBOX);
        }
    }

    @Test
    void takesValidLinesOutOfBinaryGarbage() throws IOException {
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        Random random = new Random(9);
        for (int i = 0; i < 20; i++) {
            byte[] garbage = new byte[3000];
            random.nextBytes(garbage);
            file.writeBytes(garbage);
            file.writeBytes(("\n" + valid() + "\n").getBytes(StandardCharsets.UTF_8));
        }
        file.writeBytes(valid().getBytes(StandardCharsets.UTF_16));
        assertThat(outcomes(new ByteArrayInputStream(file.toByteArray())))
                .filteredOn(line -> line.outcome() == Outcome.ACCEPTED)
                .hasSize(20);
    }

    @Test
    void takesAMillionLinesThatAreMostlyKnownOrBlank() throws IOException {
        List<String> known = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            known.add(valid());
        }
        String end = "\n".repeat(50);
        String block = String.join(end, known) + end;
        outcomes(Bytes.of(block));
        InputStream[] files = new InputStream[1001];
        for (int i = 0; i < 1000; i++) {
            files[i] = Bytes.of(block);
        }
        files[1000] = Bytes.of(valid());
        ImportSummary summary = imports.run(Bytes.joined(files), SENDER, line -> {});
        assertThat(summary).isEqualTo(new ImportSummary(1, 0, 20_000, 0));
    }

    @Test
    void keepsLinesOfFilesAndSendersWithStrangeNames() throws IOException {
        for (String name : List.of("", " ", "a\nb", "x".repeat(5000), "\ud800", "\u0000", "d\u00e9j\u00e0 vu.ndjson")) {
            List<LineOutcome> outcomes = new ArrayList<>();
            imports.run(Bytes.of("no envelope " + name.length()), new Sender("import", name), outcomes::add);
            assertThat(outcomes).extracting(LineOutcome::outcome).containsExactly(Outcome.KEPT_IN_INBOX);
        }
    }

    private List<LineOutcome> outcomes(InputStream journal) throws IOException {
        List<LineOutcome> outcomes = new ArrayList<>();
        imports.run(journal, SENDER, outcomes::add);
        return outcomes;
    }

    private String valid() {
        return valid("valid-" + ++said);
    }

    private static String valid(String id) {
        return "{\"id\":\"" + id + "\",\"kind\":\"hold\",\"version\":1,\"occurredAt\":\"2026-03-02T10:00:00Z\","
                + "\"actor\":\"a\",\"source\":\"s\",\"body\":{\"lots\":[\"L-1\"],\"reason\":\"to be seen\"}}";
    }
}
