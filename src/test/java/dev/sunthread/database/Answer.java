package dev.sunthread.database;

import java.sql.DriverManager;
import java.sql.SQLException;
import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;

/** One statement put to a server on a connection of its own; answers the first column of the first row. */
final class Answer {

    private Answer() {}

    static String of(JdbcConnectionDetails server, String sql) throws SQLException {
        try (var connection =
                        DriverManager.getConnection(server.getJdbcUrl(), server.getUsername(), server.getPassword());
                var statement = connection.createStatement()) {
            if (!statement.execute(sql)) {
                return "";
            }
            var rows = statement.getResultSet();
            return rows.next() ? rows.getString(1) : "";
        }
    }
}
