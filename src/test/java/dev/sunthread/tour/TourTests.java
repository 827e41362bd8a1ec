package dev.sunthread.tour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import dev.sunthread.access.Role;
import dev.sunthread.journal.Restores;
import dev.sunthread.testing.KnownPeople;
import dev.sunthread.testing.SunthreadTest;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import org.springframework.test.web.servlet.MockMvc;

/**
 * The tour of the README against the demo plant as it is shipped. Run with {@code -Dsunthread.tour.write=true} to write
 * its counts and its pictures anew.
 */
@Tag("browser")
@SunthreadTest(webEnvironment = WebEnvironment.RANDOM_PORT, properties = "sunthread.plant.zone=Europe/Madrid")
class TourTests {

    private static final boolean WRITES = Boolean.getBoolean("sunthread.tour.write");
    private static final int MOST_PICTURES = 8;
    private static final long LARGEST_PICTURE = 150_000;

    @LocalServerPort
    int port;

    @Autowired
    Restores restores;

    @Autowired
    MockMvc pages;

    @Autowired
    ApplicationContext context;

    @TempDir
    Path other;

    @Test
    void tellsAndShowsWhatTheDemoPlantAnswers() throws Exception {
        try (var journal = new GZIPInputStream(Files.newInputStream(Path.of("demo-data", "plant.ndjson.gz")))) {
            restores.run(journal, restored -> {});
        }
        URI plant = URI.create("http://127.0.0.1:" + port + "/");
        String counts = new TourCounts(pages).table();
        if (WRITES) {
            Readme.writeCounts(counts);
        }
        assertThat(Readme.counts()).isEqualTo(counts);
        assertThat(Readme.names()).hasSizeGreaterThan(5).allMatch(this::isFound);
        List<Path> shown = Readme.pictures();
        assertThat(shown).hasSizeBetween(4, MOST_PICTURES);
        Path pictures = WRITES ? Readme.PICTURES : other;
        TourPictures.take(
                plant, new KnownPeople(context).add("qe-1", Role.QUALITY, Role.PROCESS, Role.AUDITOR), pictures);
        for (Path picture : shown) {
            assertThat(pictures.resolve(picture.getFileName())).isNotEmptyFile();
            assertThat(Files.size(picture)).as(picture.toString()).isBetween(1L, LARGEST_PICTURE);
        }
    }

    /** Whether the search leads straight to the one thing that is called so. */
    private boolean isFound(String name) {
        try {
            return pages.perform(get("/search").param("q", name))
                            .andReturn()
                            .getResponse()
                            .getStatus()
                    == 302;
        } catch (Exception e) {
            throw new IllegalStateException(name, e);
        }
    }
}
