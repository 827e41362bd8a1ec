package dev.sunthread.web.judging;

import dev.sunthread.catalog.judging.JudgedAgain;
import dev.sunthread.kernel.verdict.Phrase;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What was asked to be judged again, in words. */
final class JudgingWords {

    private JudgingWords() {}

    /** The parts of the question, to be read one after the other. */
    static List<Phrase> of(JudgedAgain job) {
        JsonNode asked = JsonMapper.shared().readTree(job.asked());
        List<Phrase> words = new ArrayList<>();
        words.add(Phrase.of("judging.words.code", String.valueOf(text(asked, "code"))));
        String revision = text(asked, "revision");
        words.add(revision == null ? Phrase.of("judging.words.in-force") : Phrase.of("judging.revision", revision));
        add(words, "judging.words.equipment", text(asked, "equipment"));
        add(words, "judging.words.from", text(asked, "from"));
        add(words, "judging.words.to", text(asked, "to"));
        asked.get("errors").forEach(error -> words.add(wrong(error)));
        return words;
    }

    private static Phrase wrong(JsonNode error) {
        String percent = text(error, "percent");
        String quantity = String.valueOf(text(error, "quantity")).toLowerCase(Locale.ROOT);
        Phrase read = read(quantity);
        String sensor = text(error, "sensor");
        return Phrase.of(
                "ALWAYS".equals(text(error, "onset")) ? "equipment.reads-always" : "equipment.reads",
                sensor == null ? read : Phrase.of("judged.quantity", sensor, read),
                percent == null ? String.valueOf(text(error, "offset")) : percent + " %");
    }

    private static Phrase read(String quantity) {
        return switch (quantity) {
            case "temperature" -> Phrase.of("judging.reads.temperature");
            case "irradiance" -> Phrase.of("judging.reads.irradiance");
            case "humidity" -> Phrase.of("judging.reads.humidity");
            case "current" -> Phrase.of("judging.reads.current");
            default -> Phrase.of("judging.reads.voltage");
        };
    }

    private static void add(List<Phrase> words, String code, @Nullable String told) {
        if (told != null) {
            words.add(Phrase.of(code, told));
        }
    }

    private static @Nullable String text(JsonNode node, String field) {
        JsonNode value = node.get(field);
        return value == null || value.isNull() ? null : value.asString();
    }
}
