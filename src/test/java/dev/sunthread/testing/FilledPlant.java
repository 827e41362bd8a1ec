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
        fill(Plant.released(door), database, receivers);
    }

    private static void fill(Plant plant, DataSource database, int receivers) {
        for (int i = 1; i < 50; i++) {
            plant.station("BOND-" + i, "10", "V1", "V2");
        }
        run(database, "/testing/filled-plant.sql", receivers);
    }

    /** The same with routes and structures that demand what was done, and a record of nearly all of it. */
    public static void fillDemanding(Door door, DataSource database, int receivers) {
        Plant plant = Plant.released(door);
        DemandedWork.release(plant);
        fill(plant, database, receivers);
        run(database, "/testing/demanding-plant.sql", receivers);
    }

    /** Writes so many test runs with raw sweeps under specification {@code PULL} on {@code RIG}. */
    public static void fillTests(DataSource database, int runs) {
        run(database, "/testing/filled-tests.sql", runs);
    }

    private static void run(DataSource database, String script, int receivers) {
        try (var connection = database.getConnection();
                var statement = connection.createStatement()) {
            statement.execute(text(script).replace("${n}", String.valueOf(receivers)));
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String text(String script) {
        try (InputStream in = FilledPlant.class.getResourceAsStream(script)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
