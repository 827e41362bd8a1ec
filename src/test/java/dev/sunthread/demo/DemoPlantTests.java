package dev.sunthread.demo;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.demo.told.JournalWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.Test;

/** Run with {@code -Dsunthread.demo.write=true} to write the file anew. */
class DemoPlantTests {

    @Test
    void fileOfTheRepositoryIsWhatTheGeneratorMakes() throws IOException {
        if (Boolean.getBoolean("sunthread.demo.write")) {
            DemoPlant.main(new String[0]);
        }
        try (GZIPInputStream file = new GZIPInputStream(Files.newInputStream(DemoPlant.FILE))) {
            // asserted as a truth, because a difference of megabytes is no help to print
            assertThat(new String(file.readAllBytes(), StandardCharsets.UTF_8)
                            .equals(DemoPlant.of(DemoPlant.TRAYS_A_DAY).journal()))
                    .as("the file differs from what the generator makes; write it anew if that is meant")
                    .isTrue();
        }
    }

    @Test
    void makesTheSameFileEachTime() {
        assertThat(JournalWriter.compressed(DemoPlant.of(DemoPlant.FEW_TRAYS).journal()))
                .isEqualTo(JournalWriter.compressed(
                        DemoPlant.of(DemoPlant.FEW_TRAYS).journal()));
    }
}
