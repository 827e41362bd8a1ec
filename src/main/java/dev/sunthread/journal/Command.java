package dev.sunthread.journal;

import dev.sunthread.kernel.Refused;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.CommandLineRunner;
import org.springframework.stereotype.Component;

/** The commands of the jar: {@code import}, {@code export} and {@code restore} a file, or {@code check} the state. */
@Component
public class Command implements CommandLineRunner {

    /** The words that make the program run a command instead of serving pages. */
    public static final Set<String> WORDS = Set.of("import", "export", "restore", "check", "rebuild");

    /** The option by which an import goes on behind many lines in a row that can't be read. */
    private static final String GO_ON = "go-on";

    private final Imports imports;
    private final Exports exports;
    private final Restores restores;
    private final StateCheck check;
    private final ApplicationArguments arguments;

    Command(Imports imports, Exports exports, Restores restores, StateCheck check, ApplicationArguments arguments) {
        this.imports = imports;
        this.exports = exports;
        this.restores = restores;
        this.check = check;
        this.arguments = arguments;
    }

    @Override
    public void run(String... args) throws IOException {
        List<String> words = arguments.getNonOptionArgs();
        if (!words.isEmpty() && WORDS.contains(words.get(0))) {
            run(words.get(0), words.subList(1, words.size()));
        }
    }

    private void run(String word, List<String> files) throws IOException {
        switch (word) {
            case "check" -> check.report(System.out::println);
            case "rebuild" -> check.rebuild(System.out::println);
            case "export" -> export(file(word, files));
            case "restore" -> restore(file(word, files));
            default -> takeIn(file(word, files));
        }
    }

    private static Path file(String word, List<String> files) {
        if (files.size() != 1) {
            throw new Refused(
                    "The command " + word + " takes one file", "Call: java -jar sunthread.jar " + word + " FILE");
        }
        return Path.of(files.get(0));
    }

    private void takeIn(Path file) throws IOException {
        try (InputStream journal = open(file)) {
            ImportSummary summary =
                    imports.run(journal, new Sender("import", file.getFileName().toString()), goesOn(), line -> {
                        if (line.outcome() != LineOutcome.Outcome.ACCEPTED
                                && line.outcome() != LineOutcome.Outcome.KNOWN_BEFORE) {
                            System.out.println(line);
                        }
                    });
            System.out.println(summary);
        }
    }

    private boolean goesOn() {
        return arguments.containsOption(GO_ON);
    }

    private void export(Path file) throws IOException {
        try (OutputStream out = Files.newOutputStream(file)) {
            System.out.println("Exported " + exports.write(out) + " entries to " + file);
        }
    }

    private void restore(Path file) throws IOException {
        try (InputStream journal = open(file)) {
            long restored = restores.run(journal, count -> System.out.println(count + " entries restored ..."));
            System.out.println("Restored " + restored + " entries from " + file);
        }
    }

    static InputStream open(Path file) throws IOException {
        return SentFile.text(Files.newInputStream(file));
    }
}
