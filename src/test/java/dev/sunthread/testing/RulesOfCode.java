package dev.sunthread.testing;

import dev.sunthread.holds.SoftRule;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The rules that the code names, read from its sources. */
public final class RulesOfCode {

    private static final Path SOURCES = Path.of("src", "main", "java");

    /** From a call that breaks or shows a rule to the first text with a space, which is its sentence. */
    private static final Pattern CALL = Pattern.compile("\\b(?:breaks|shows)\\((?:[^\"]|\"[^\" ]*\")*?\"[^\"]* ");

    private static final Pattern NAME = Pattern.compile("\"([a-z]+(?:-[a-z]+){2,})\"");

    private RulesOfCode() {}

    public static Set<String> names() throws IOException {
        Set<String> rules = new TreeSet<>(
                Arrays.stream(SoftRule.values()).map(SoftRule::word).toList());
        for (Path source : sources()) {
            Matcher calls = CALL.matcher(Files.readString(source));
            while (calls.find()) {
                NAME.matcher(calls.group()).results().forEach(name -> rules.add(name.group(1)));
            }
        }
        return rules;
    }

    private static List<Path> sources() throws IOException {
        try (Stream<Path> files = Files.walk(SOURCES)) {
            return files.filter(file -> file.toString().endsWith(".java")).toList();
        }
    }
}
