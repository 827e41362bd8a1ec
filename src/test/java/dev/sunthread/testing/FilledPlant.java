package dev.sunthread.testing;

import dev.sunthread.ledger.Door;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.sql.SQLException;
import javax.sql.DataSource;

/** Fills a fresh database with the history of a plant of any size, quickly; the database user has to be its owner. */
public final class FilledPlant {

    private FilledPlant() {}

    /** Writes so many receivers, a multiple of 10,000, with all that became of them. */
    public static void fill(Door door, DataSource database, int receivers) {
        Plant plant = Plant.released(door);
        for (int i = 1; i < 50; i++) {
            plant.station("BOND-" + i, "10", "V1", "V2");
        }
        try (var connection = database.getConnection();
                var statement = connection.createStatement()) {
            statement.execute(script().replace("${n}", String.valueOf(receivers)));
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String script() {
        try (InputStream in = FilledPlant.class.getResourceAsStream("/testing/filled-plant.sql")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
