package dev.sunthread.scan.gs1;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** Every application identifier, read once from the embedded GS1 Barcode Syntax Dictionary. */
final class SyntaxDictionary {

    private static final String FILE = "/gs1/gs1-syntax-dictionary.txt";
    private static final Map<String, ApplicationIdentifier> ALL = read();

    private SyntaxDictionary() {}

    /** The identifier at the beginning of the text; no identifier is the beginning of another. */
    static Optional<ApplicationIdentifier> beginning(String text) {
        for (int length = Math.min(4, text.length()); length >= 2; length--) {
            ApplicationIdentifier found = ALL.get(text.substring(0, length));
            if (found != null) {
                return Optional.of(found);
            }
        }
        return Optional.empty();
    }

    static Optional<ApplicationIdentifier> find(String code) {
        return Optional.ofNullable(ALL.get(code));
    }

    private static Map<String, ApplicationIdentifier> read() {
        Map<String, ApplicationIdentifier> all = new HashMap<>();
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(SyntaxDictionary.class.getResourceAsStream(FILE)), StandardCharsets.UTF_8))) {
            lines.lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .forEach(line ->
                            read(line.replaceFirst("\\s#\\s.*", "").trim().split("\\s+"), all));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return Map.copyOf(all);
    }

    private static void read(String[] words, Map<String, ApplicationIdentifier> all) {
        String flags = Component.of(words[1]).isPresent() ? "" : words[1];
        List<Component> components = Arrays.stream(words)
                .skip(1)
                .flatMap(word -> Component.of(word).stream())
                .toList();
        Optional<List<List<String>>> qualifiers = Arrays.stream(words)
                .filter(word -> word.matches("dlpkey(=.*)?"))
                .map(word -> alternatives(word.substring("dlpkey".length())))
                .findFirst();
        String[] range = words[0].split("-");
        for (int code = Integer.parseInt(range[0]); code <= Integer.parseInt(range[range.length - 1]); code++) {
            String digits = ("%0" + range[0].length() + "d").formatted(code);
            all.put(
                    digits,
                    new ApplicationIdentifier(
                            digits, flags.contains("*"), flags.contains("?"), components, qualifiers));
        }
    }

    private static List<List<String>> alternatives(String written) {
        return written.isEmpty()
                ? List.of()
                : Arrays.stream(written.substring(1).split("\\|"))
                        .map(alternative -> List.of(alternative.split(",")))
                        .toList();
    }
}
