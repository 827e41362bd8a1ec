package dev.sunthread.database;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;

/** A second Java process with an embedded server on the directory and the statement it is given; says how it went. */
final class OtherApplication implements AutoCloseable {

    private final Process process;
    private final BufferedReader output;

    private OtherApplication(Process process) {
        this.process = process;
        this.output = process.inputReader(StandardCharsets.UTF_8);
    }

    static OtherApplication start(Path home, String sql) throws IOException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        List<String> command = List.of(
                java,
                "-cp",
                System.getProperty("java.class.path"),
                OtherApplication.class.getName(),
                home.toString(),
                sql);
        return new OtherApplication(new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start());
    }

    String says() {
        return output.lines()
                .filter(line -> line.startsWith("application "))
                .findFirst()
                .orElse("nothing");
    }

    @Override
    public void close() {
        process.destroyForcibly().onExit().join();
    }

    public static void main(String[] args) throws IOException, SQLException {
        try {
            var server = EmbeddedServer.start(Path.of(args[0]));
            Answer.of(server, args[1]);
            System.out.println("application started");
            // the test kills this process; until then it runs
            System.in.read();
        } catch (DirectoryRefused refused) {
            System.out.println("application refused: " + refused.getMessage());
        }
    }
}
