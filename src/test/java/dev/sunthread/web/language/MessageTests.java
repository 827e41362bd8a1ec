package dev.sunthread.web.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The words of pages: all in the bundles, all in both languages, and none that is not used. */
class MessageTests {

    private static final Path RESOURCES = Path.of("src/main/resources");
    private static final Path SOURCES = Path.of("src/main/java");

    private static final Pattern KEY = Pattern.compile("#\\{([a-z][\\w.-]*)");
    private static final Pattern BEGIN_OF_KEY = Pattern.compile("#\\{(?:\\||\\$\\{')([\\w.-]+[.])(?:\\$|')");
    private static final Pattern PHRASE = Pattern.compile("\"((?:judged|chart)[.][a-z.-]+)\"");
    private static final Pattern HEADING = Pattern.compile("\"(column[.][a-z-]+)\"");

    @Test
    void everyMessageIsThereInBothLanguages() throws IOException {
        for (Path english : bundles("")) {
            Path german = Path.of(english.toString().replace(".properties", "_de.properties"));
            assertThat(read(german).keySet())
                    .as(german.toString())
                    .isEqualTo(read(english).keySet());
        }
    }

    @Test
    void noMessageIsInTwoBundles() throws IOException {
        List<String> keys = new ArrayList<>();
        for (Path english : bundles("")) {
            keys.addAll(read(english).keySet());
        }
        assertThat(keys).doesNotHaveDuplicates();
    }

    @Test
    void noApostropheChangesWhatAPatternMeans() throws IOException {
        for (Path bundle :
                Stream.concat(bundles("").stream(), bundles("_de").stream()).toList()) {
            read(bundle).forEach((key, words) -> assertThat(words).as(key).doesNotContain("'"));
        }
    }

    @Test
    void everyKeyThatATemplateOrATableNamesExists() throws IOException {
        assertThat(messages().keySet())
                .containsAll(found(KEY, templates()))
                .containsAll(found(PHRASE, files(SOURCES, ".java")))
                .containsAll(found(HEADING, files(SOURCES, ".java")));
        for (String begin : found(BEGIN_OF_KEY, templates())) {
            assertThat(messages().keySet()).as(begin).anyMatch(key -> key.startsWith(begin));
        }
    }

    @Test
    void everyMessageIsUsed() throws IOException {
        List<String> whole = found(KEY, templates());
        List<String> begun = found(BEGIN_OF_KEY, templates());
        Set<String> sentences = new TreeSet<>(
                read(RESOURCES.resolve("messages/sentences.properties")).keySet());
        sentences.addAll(read(RESOURCES.resolve("messages/rules.properties")).keySet());
        sentences.addAll(read(RESOURCES.resolve("messages/refusals.properties")).keySet());
        String code = String.join("\n", texts(files(SOURCES, ".java")));
        String pages = String.join("\n", texts(templates()));
        assertThat(messages().keySet())
                .filteredOn(key -> !sentences.contains(key)
                        && !whole.contains(key)
                        && begun.stream().noneMatch(key::startsWith)
                        && !key.startsWith("access.refused.")
                        && !code.contains('"' + key + '"')
                        && !code.contains('"'
                                + key.replaceFirst("^(work|access(\\.refused)?)\\.", "")
                                        .replaceFirst("\\.remedy$", "")
                                + '"')
                        && !code.contains("{" + key + "}")
                        && !pages.contains("'" + key + "'"))
                .isEmpty();
    }

    @Test
    void everyKindOfEnvelopeHasAName() throws IOException {
        String kinds = Files.readString(Path.of("src/docs/access.md")).split("(?m)^\\| kind \\|")[1];
        Set<String> named = new TreeSet<>();
        Pattern.compile("(?m)^\\| `([a-z-]+)`")
                .matcher(kinds)
                .results()
                .forEach(row -> named.add("kind." + row.group(1)));
        assertThat(messages().keySet())
                .filteredOn(key -> key.startsWith("kind."))
                .hasSizeGreaterThan(40)
                .containsExactlyElementsOf(named);
    }

    @Test
    void noTemplateHasWordsOfItsOwn() throws IOException {
        for (Path template : templates()) {
            assertThat(HardWords.in(Files.readString(template)))
                    .as(template.toString())
                    .isEmpty();
        }
    }

    @Test
    void findsWordsOfATemplateWhereverTheyStand() {
        assertThat(HardWords.in(
                        "<p>Go</p> [[#{a}]] <b title=\"Say\" th:text=\"|Lot ${x}|\">[[#{b}]]</b> <code>lot</code>"))
                .containsExactlyInAnyOrder("Go", "title=\"Say\"", "th:text=\"|Lot ${x}|\"");
        assertThat(HardWords.in("<p th:text=\"${a ? 'one' : b}\" class=\"x\">1 [[#{a.b(${c.d()})}]]</p>"))
                .containsExactly("th:text=\"${a ? 'one' : b}\"");
    }

    private static Map<String, String> messages() throws IOException {
        Map<String, String> all = new TreeMap<>();
        for (Path bundle : bundles("")) {
            all.putAll(read(bundle));
        }
        return all;
    }

    private static List<Path> bundles(String language) throws IOException {
        String ending = language + ".properties";
        return files(RESOURCES.resolve("messages"), ending).stream()
                .filter(file -> !language.isEmpty() || !file.toString().contains("_"))
                .toList();
    }

    private static Map<String, String> read(Path bundle) throws IOException {
        Properties properties = new Properties();
        try (var text = Files.newBufferedReader(bundle)) {
            properties.load(text);
        }
        Map<String, String> messages = new TreeMap<>();
        properties.forEach((key, words) -> messages.put(key.toString(), words.toString()));
        return messages;
    }

    private static List<String> found(Pattern pattern, List<Path> files) throws IOException {
        return texts(files).stream()
                .flatMap(text -> pattern.matcher(text).results())
                .map(match -> match.group(1))
                .distinct()
                .toList();
    }

    private static List<String> texts(List<Path> files) throws IOException {
        List<String> texts = new ArrayList<>();
        for (Path file : files) {
            texts.add(Files.readString(file));
        }
        return texts;
    }

    private static List<Path> templates() throws IOException {
        return files(RESOURCES.resolve("templates"), ".html");
    }

    private static List<Path> files(Path below, String ending) throws IOException {
        try (Stream<Path> all = Files.walk(below)) {
            return all.filter(file -> file.toString().endsWith(ending)).toList();
        }
    }
}
