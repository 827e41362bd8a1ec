package dev.sunthread.genealogy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The tables that the statements of an answer read without the condition of the cut-off on them, by the class and the
 * constant or method a statement stands in; found in the sources.
 */
final class ReadWithoutCutOff {

    private static final Path SOURCES = Path.of("src/main/java/dev/sunthread");

    private static final List<String> OF_ANSWERS = List.of(
            "genealogy/history",
            "genealogy/scope",
            "genealogy/answer",
            "genealogy/Windows.java",
            "inbox/Findings.java",
            "inbox/Lines.java",
            "holds/Holds.java",
            "quality/StationsBehind.java",
            "catalog/Levels.java",
            "catalog/judging/Selection.java",
            "catalog/judging/UnderRevisions.java");

    private static final Pattern READ = Pattern.compile("(?:FROM|JOIN)\\s+"
            + "((?:catalog|materials|production|cure|electrical|quality|inbox|holds|ledger)\\.[a-z_]+)"
            + "(?:\\s+(?:AS\\s+)?([a-z]+\\b))?");

    private static final Pattern CONSTANT = Pattern.compile("String\\s+(\\w+)\\s*=");

    private static final Pattern METHOD = Pattern.compile("\\n    (?:[\\w<>,.@? ]+) (\\w+)\\([^;]*?\\)[^;{]*\\{");

    private ReadWithoutCutOff() {}

    /** The tables by {@code Class.CONSTANT} or {@code Class.method}. */
    static Map<String, String> found() {
        Map<String, TreeSet<String>> found = new TreeMap<>();
        OF_ANSWERS.stream().flatMap(ReadWithoutCutOff::files).forEach(file -> read(file, found));
        return found.entrySet().stream()
                .collect(Collectors.toMap(
                        Map.Entry::getKey, one -> String.join(" ", one.getValue()), (one, other) -> one, TreeMap::new));
    }

    private static Stream<Path> files(String name) {
        try (Stream<Path> files = Files.walk(SOURCES.resolve(name))) {
            return files.filter(file -> file.toString().endsWith(".java")).toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void read(Path file, Map<String, TreeSet<String>> found) {
        String type = file.getFileName().toString().replace(".java", "");
        String method = type;
        for (String statement : text(file).split(";\\s*\\n")) {
            Matcher declared = METHOD.matcher(statement);
            while (declared.find()) {
                method = declared.group(1);
            }
            Matcher constant = CONSTANT.matcher(statement);
            String holder = type + "." + (constant.find() ? constant.group(1) : method);
            Matcher read = READ.matcher(statement);
            while (read.find()) {
                if (!isConditioned(statement, read.group(2))) {
                    found.computeIfAbsent(holder, any -> new TreeSet<>()).add(read.group(1));
                }
            }
        }
    }

    private static boolean isConditioned(String statement, @Nullable String alias) {
        return alias != null && statement.matches("(?s).*(?:at|named)\\(\"" + alias + "(?:\\.entry)?\"\\).*");
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
