package dev.sunthread.benchmark;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.inbox.Findings;
import dev.sunthread.journal.Exports;
import dev.sunthread.journal.Imports;
import dev.sunthread.journal.Restores;
import dev.sunthread.journal.Sender;
import dev.sunthread.journal.StateCheck;
import dev.sunthread.ledger.Sealer;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.testing.TestDatabase;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Locale;
import java.util.stream.Stream;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.core.io.ClassPathResource;

/** Prints how long it takes to import, export and restore the journal of a line. */
@Tag("benchmark")
@SunthreadTest(properties = "spring.datasource.driver-class-name=dev.sunthread.benchmark.CountingDriver")
class RestoreBenchmark {

    private static final int RECEIVERS = Integer.getInteger("sunthread.receivers", 5_000);

    @Autowired
    Imports imports;

    @Autowired
    Exports exports;

    @Autowired
    Restores restores;

    @Autowired
    StateCheck check;

    @Autowired
    Findings findings;

    @Autowired
    Sealer sealer;

    @Autowired
    ApplicationContext context;

    @TempDir
    Path directory;

    private interface Work {
        void run() throws IOException;
    }

    @Test
    void tellsTimes() throws IOException {
        Path told = directory.resolve("told.ndjson");
        Path export = directory.resolve("export.ndjson");
        int envelopes;
        try (PrintWriter lines = new PrintWriter(Files.newBufferedWriter(told, StandardCharsets.UTF_8))) {
            envelopes = LinePlant.tell(RECEIVERS, line -> lines.print(line + "\n"));
        }
        time("import", envelopes, () -> importAll(told));
        time("export", envelopes, () -> exportTo(export));
        TestDatabase.beginAgain(context);
        time("restore", envelopes, () -> restore(export));
        Path again = directory.resolve("again.ndjson");
        exportTo(again);
        assertThat(again).hasSameBinaryContentAs(export);
        assertThat(check.differences()).isEmpty();
        System.out.printf(Locale.ROOT, "%,d findings%n", findings.count(sealer.last()));
    }

    @Test
    void tellsTheTimeOfTheDemoPlant() throws IOException {
        Path journal = directory.resolve("demo.ndjson");
        try (InputStream in =
                new GZIPInputStream(new ClassPathResource("demo-data/plant.ndjson.gz").getInputStream())) {
            Files.copy(in, journal);
        }
        int envelopes;
        try (Stream<String> lines = Files.lines(journal)) {
            envelopes = (int) lines.count() - 2;
        }
        time("demo", envelopes, () -> restore(journal));
        assertThat(check.differences()).isEmpty();
    }

    private void importAll(Path told) throws IOException {
        try (InputStream in = Files.newInputStream(told)) {
            imports.run(
                    in, new Sender("import", "line"), line -> line.problems().forEach(System.out::println));
        }
    }

    private void exportTo(Path file) throws IOException {
        try (OutputStream out = Files.newOutputStream(file)) {
            exports.write(out);
        }
    }

    private void restore(Path export) throws IOException {
        try (InputStream in = Files.newInputStream(export)) {
            restores.run(in, RestoreBenchmark::tellNowAndThen);
        }
    }

    /** With the processor time of this program, which other programs beside it do not lengthen. */
    private static void tellNowAndThen(long restored) {
        if (restored % 5000 == 0) {
            System.out.printf(
                    Locale.ROOT,
                    "%,9d restored, %s of processor time%n",
                    restored,
                    ProcessHandle.current().info().totalCpuDuration().orElse(Duration.ZERO));
        }
    }

    private static void time(String what, int envelopes, Work work) throws IOException {
        long begin = System.nanoTime();
        work.run();
        double millis = (System.nanoTime() - begin) / 1e6;
        System.out.printf(
                Locale.ROOT,
                "%-8s %,7d envelopes %,9.1f s %8.2f ms an envelope%n",
                what,
                envelopes,
                millis / 1e3,
                millis / envelopes);
        CountingDriver.report(envelopes);
    }
}
