package dev.sunthread.web.language;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.kernel.Refused;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.context.i18n.LocaleContextHolder;

/** Every refusal that the code puts into words, but those of the command line, is said in German on a German page. */
class RefusalWordsTests {

    private static final Path SOURCES = Path.of("src", "main", "java");
    private static final Set<String> NO_PAGES = Set.of("Command.java", "Words.java");

    private static final Pattern CALL = Pattern.compile("new (?:Refused|Busy)\\(");
    private static final Pattern TEXT = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");

    private final RuleWords words = new RuleWords(InterpreterTests.messages());

    @BeforeEach
    void readInGerman() {
        LocaleContextHolder.setLocale(Locale.GERMAN);
    }

    @AfterEach
    void readNothing() {
        LocaleContextHolder.resetLocaleContext();
    }

    @Test
    void everyRefusalOfThePagesHasAForm() throws IOException {
        List<String> said = new ArrayList<>();
        for (Path source : sources()) {
            CALL.matcher(Files.readString(source))
                    .results()
                    .flatMap(call -> arguments(source, call))
                    .filter(argument -> argument.contains("\""))
                    .forEach(argument -> said.add(sample(argument)));
        }
        assertThat(said)
                .hasSizeGreaterThan(80)
                .allSatisfy(sentence -> assertThat(german(sentence))
                        .as(sentence)
                        .isNotEqualTo(sentence.endsWith(".") ? sentence : sentence + "."));
    }

    @Test
    void whatIsNamedStaysAsItIs() {
        assertThat(german("\"noon\" is no time")).isEqualTo("„noon“ ist keine Zeit.");
        assertThat(german("Supplier lot LF-1 is not recorded")).isEqualTo("Lieferantenlos LF-1 ist nicht erfasst.");
    }

    private String german(String reason) {
        return words.why(new Refused(reason, "")).wrong();
    }

    /** The arguments of a call, parted by the commas that stand in no text and no other call. */
    private static Stream<String> arguments(Path source, MatchResult call) {
        try {
            String code = Files.readString(source);
            List<String> arguments = new ArrayList<>();
            int depth = 1;
            boolean inText = false;
            StringBuilder argument = new StringBuilder();
            for (int i = call.end(); depth > 0; i++) {
                char sign = code.charAt(i);
                inText = sign == '"' && code.charAt(i - 1) != '\\' ? !inText : inText;
                depth += inText ? 0 : sign == '(' ? 1 : sign == ')' ? -1 : 0;
                if (depth == 0 || sign == ',' && depth == 1 && !inText) {
                    arguments.add(argument.toString());
                    argument.setLength(0);
                } else {
                    argument.append(sign);
                }
            }
            return arguments.stream();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** The sentence that an expression composes, with X for whatever it names. */
    private static String sample(String argument) {
        StringBuilder sentence = new StringBuilder();
        int end = 0;
        for (MatchResult text : TEXT.matcher(argument).results().toList()) {
            String between = argument.substring(end, text.start()).strip();
            sentence.append(between.matches("[+]?") || !between.contains("+") ? "" : "X")
                    .append(text.group(1));
            end = text.end();
        }
        String rest = argument.substring(end).strip();
        return (sentence + (rest.startsWith("+") ? "X" : ""))
                .replace("\\\"", "\"")
                .replaceAll("%[.\\w]*[sdf]", "X");
    }

    private static List<Path> sources() throws IOException {
        try (Stream<Path> files = Files.walk(SOURCES)) {
            return files.filter(file -> file.toString().endsWith(".java"))
                    .filter(file -> !NO_PAGES.contains(file.getFileName().toString()))
                    .toList();
        }
    }
}
