package dev.sunthread.journal;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.ledger.Kinds;
import dev.sunthread.testing.SunthreadTest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** Run with {@code -Dsunthread.docs.write=true} to write the file anew. */
@SunthreadTest
class JournalReferenceTests {

    private static final Path FILE = Path.of("src", "docs", "journal.md");
    private static final Path INTRODUCTION = Path.of("src", "test", "resources", "journal", "introduction.md");

    @Autowired
    Kinds kinds;

    @Test
    void fileOfTheRepositoryIsWhatTheKindsSay() throws IOException {
        String reference = JournalReference.of(Files.readString(INTRODUCTION), kinds, EveryKind.examples());
        if (Boolean.getBoolean("sunthread.docs.write")) {
            Files.writeString(FILE, reference);
        }
        assertThat(Files.readString(FILE)).isEqualTo(reference);
    }
}
