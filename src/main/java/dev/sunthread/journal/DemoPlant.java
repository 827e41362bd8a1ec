package dev.sunthread.journal;

import dev.sunthread.ledger.Entries;
import java.io.IOException;
import java.io.InputStream;
import java.util.zip.GZIPInputStream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.CommandLineRunner;
import org.springframework.context.annotation.Profile;
import org.springframework.core.annotation.Order;
import org.springframework.core.io.ClassPathResource;
import org.springframework.stereotype.Component;

/** Restores the demo plant into an empty database, in the profile {@code demo}. */
@Component
@Profile("demo")
@Order(0)
class DemoPlant implements CommandLineRunner {

    private static final Logger LOG = LoggerFactory.getLogger(DemoPlant.class);

    private final Entries entries;
    private final Restores restores;

    DemoPlant(Entries entries, Restores restores) {
        this.entries = entries;
        this.restores = restores;
    }

    @Override
    public void run(String... args) throws IOException {
        if (!entries.none()) {
            return;
        }
        LOG.info("Loading the demo plant into the empty database");
        try (InputStream in =
                new GZIPInputStream(new ClassPathResource("demo-data/plant.ndjson.gz").getInputStream())) {
            long restored = restores.run(in, count -> LOG.info("Loading the demo plant: {} entries so far", count));
            LOG.info("Loaded the demo plant: {} entries", restored);
        }
    }
}
