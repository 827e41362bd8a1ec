package dev.sunthread.access;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** A table of the document on rights: who may do what, by the name of what is done. */
final class Matrix {

    private static final Path FILE = Path.of("src", "docs", "access.md");
    private static final String COLUMNS = "| operator | quality | process | auditor | administrator |";

    private final String first;

    Matrix(String first) {
        this.first = first;
    }

    /** The rows as the document has them. */
    Map<String, String> documented() throws IOException {
        List<String> lines = Files.readAllLines(FILE);
        int head = lines.indexOf(head());
        return lines.stream()
                .skip(head + 2L)
                .takeWhile(line -> line.startsWith("|"))
                .collect(Collectors.toMap(
                        line -> line.split("`")[1],
                        line -> line.substring(line.indexOf('|', 1)),
                        (a, b) -> a,
                        TreeMap::new));
    }

    /** Writes the rows into the document, in place of those it has. */
    void write(Map<String, String> rows) throws IOException {
        List<String> lines = Files.readAllLines(FILE);
        int head = lines.indexOf(head());
        int end = head + 2;
        while (end < lines.size() && lines.get(end).startsWith("|")) {
            end++;
        }
        List<String> before = lines.subList(0, head + 2);
        String table = new TreeMap<>(rows)
                .entrySet().stream()
                        .map(row -> "| `" + row.getKey() + "` " + row.getValue() + "\n")
                        .collect(Collectors.joining());
        Files.writeString(
                FILE,
                String.join("\n", before) + "\n" + table + String.join("\n", lines.subList(end, lines.size())) + "\n");
    }

    private String head() {
        return "| " + first + " " + COLUMNS;
    }

    static String cells(List<Boolean> allowed) {
        return allowed.stream().map(may -> may ? "| yes " : "| - ").collect(Collectors.joining()) + "|";
    }
}
