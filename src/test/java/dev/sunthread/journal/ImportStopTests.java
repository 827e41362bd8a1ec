package dev.sunthread.journal;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.journal.LineOutcome.Outcome;
import dev.sunthread.testing.SunthreadTest;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** An import that can't or should not go on says where it stopped and what to do; what it took before stays. */
@SunthreadTest
class ImportStopTests {

    private static final Sender SENDER = new Sender("import", "shift.ndjson");

    /** Names of packages, classes and methods, and what stands where a program had no words. */
    private static final Pattern OF_THE_PROGRAM = Pattern.compile(
            "\\b(java|javax|jakarta|org|com|tools|dev)\\.[a-z]|\\w+(Exception|Error|Node|Reader)\\b|\\w\\(\\)|\\bnull\\b|\\bat \\[");

    @Autowired
    Imports imports;

    @Test
    void stopsBehindManyLinesInARowThatCantBeRead() throws IOException {
        String file = item(1) + "\n" + rubbish(99) + item(2) + "\n" + rubbish(150) + item(3);
        ImportSummary summary = run(file, false, new ArrayList<>());
        ImportStop stop = Objects.requireNonNull(summary.stopped());
        assertThat(stop.line()).isEqualTo(201);
        assertThat(stop.reason()).isEqualTo("None of the last 100 lines up to line 201 can be read");
        assertThat(stop.canGoOn()).isTrue();
        assertThat(summary)
                .extracting(ImportSummary::accepted, ImportSummary::keptInInbox)
                .containsExactly(2L, 199L);
    }

    @Test
    void goesOnIfItIsAskedTo() throws IOException {
        String file = rubbish(150) + item(3);
        run(file, false, new ArrayList<>());
        ImportSummary summary = run(file, true, new ArrayList<>());
        assertThat(summary).isEqualTo(new ImportSummary(1, 0, 0, 150));
    }

    @Test
    void saysWhichLineOfACutPackedFileIsTheLastWholeOne() throws IOException {
        StringBuilder lines = new StringBuilder();
        for (int i = 1; i <= 2000; i++) {
            lines.append(item(i)).append('\n');
        }
        byte[] whole = SentFileTests.packed(lines.toString());
        List<LineOutcome> outcomes = new ArrayList<>();
        try (InputStream cut = SentFile.text(new ByteArrayInputStream(Arrays.copyOf(whole, whole.length / 3)))) {
            ImportStop stop = Objects.requireNonNull(
                    imports.run(cut, SENDER, outcomes::add).stopped());
            assertThat(stop.reason())
                    .isEqualTo("The packed file is cut or damaged: line " + outcomes.size() + " is the last whole one");
            assertThat(stop.canGoOn()).isFalse();
        }
        assertThat(outcomes).hasSizeGreaterThan(300).allMatch(line -> line.outcome() == Outcome.ACCEPTED);
    }

    @Test
    void saysNothingInTheWordsOfTheProgram() throws IOException {
        List<String> lines = new ArrayList<>(StrangeLines.byWhatIsStrange(item(1).replace("glue 1", "to be seen"))
                .values());
        lines.addAll(
                List.of("", "\"", "{\"a\":1,\"a\":2}", "{} x", "tru", "[", "{\"id\":nan}", "\\u00", "{\"a\":1e5000}"));
        List<LineOutcome> outcomes = new ArrayList<>();
        run(String.join("\n" + item(9) + "\n", lines), true, outcomes);
        List<String> said = outcomes.stream()
                .flatMap(line -> line.problems().stream())
                .flatMap(problem -> Stream.of(problem.reason(), problem.remedy()))
                .toList();
        assertThat(said)
                .hasSizeGreaterThan(30)
                .noneMatch(words -> OF_THE_PROGRAM.matcher(words).find());
    }

    private ImportSummary run(String file, boolean goesOn, List<LineOutcome> outcomes) throws IOException {
        return imports.run(Bytes.of(file), SENDER, goesOn, outcomes::add);
    }

    private static String rubbish(int lines) {
        StringBuilder rubbish = new StringBuilder();
        for (int i = 1; i <= lines; i++) {
            rubbish.append(lines).append(" no envelope ").append(i).append('\n');
        }
        return rubbish.toString();
    }

    private static String item(int number) {
        return """
                {"id":"i-%1$d","kind":"item","version":1,"occurredAt":"2026-03-01T00:00:00Z","actor":"a","source":"s",\
                "body":{"item":"ADH-%1$d","revision":"A","name":"glue %1$d","tracking":"lot","unitOfMeasure":"g"}}""".formatted(number);
    }
}
