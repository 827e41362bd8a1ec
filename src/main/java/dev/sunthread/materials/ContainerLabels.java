package dev.sunthread.materials;

import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Labels of containers. A label that is named before its filling is known from then on, so that nothing is lost. */
@Repository
public class ContainerLabels {

    private final JdbcClient jdbc;

    ContainerLabels(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The internal number of a container, known from now on. */
    public long register(String label) {
        return find(label).orElseGet(() -> {
            jdbc.sql("INSERT INTO materials.container (label) VALUES (?) ON CONFLICT (label) DO NOTHING")
                    .param(label)
                    .update();
            return find(label).orElseThrow();
        });
    }

    private Optional<Long> find(String label) {
        return jdbc.sql("SELECT id FROM materials.container WHERE label = ?")
                .param(label)
                .query(Long.class)
                .optional();
    }
}
