package dev.sunthread.tour;

import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.net.URI;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.springframework.test.web.servlet.MockMvc;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What the questions of the tour are answered, as a table of the README. */
final class TourCounts {

    private static final List<String> LEVELS = List.of("panel", "module", "wall", "receiver");
    private static final List<String> CLASSES = List.of("certain", "possible", "unproven");

    private static final String DRIFTED = "{\"of\":\"equipment\",\"equipment\":\"OVEN-2\",\"window\":"
            + "{\"from\":\"2026-10-12T05:06:00+02:00\",\"to\":\"2026-10-19T05:06:00+02:00\"}}";

    private record Asked(String words, String parameters) {}

    private static final List<Asked> QUESTIONS = List.of(
            new Asked("adhesive lot `A-17`", "lot=A-17"),
            new Asked("supplier lot `LF-7741`", "supplierLot=LF-7741"),
            new Asked("`OVEN-2` while it drifted", "scope=" + URLEncoder.encode(DRIFTED, StandardCharsets.UTF_8)),
            new Asked("conformal coat `K-58`", "lot=K-58"));

    private final MockMvc pages;

    TourCounts(MockMvc pages) {
        this.pages = pages;
    }

    String table() throws Exception {
        StringBuilder table = new StringBuilder(
                "| where did it go: | panels | modules | walls | receivers |\n|---|---|---|---|---|\n");
        for (Asked asked : QUESTIONS) {
            JsonNode counts = counts(asked.parameters());
            table.append("| ").append(asked.words()).append(" | ");
            table.append(LEVELS.stream().map(level -> cell(counts, level)).collect(Collectors.joining(" | ")));
            table.append(" |\n");
        }
        return table.toString();
    }

    private JsonNode counts(String parameters) throws Exception {
        URI asked = URI.create("/api/v1/traces?way=forward&" + parameters);
        String answer = pages.perform(get(asked))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString(StandardCharsets.UTF_8);
        return JsonMapper.shared().readTree(answer).required("counts");
    }

    private static String cell(JsonNode counts, String level) {
        String words = StreamSupport.stream(counts.spliterator(), false)
                .filter(count -> count.path("when").asString("").equals("EVER")
                        && count.path("level").asString("").equals(level))
                .flatMap(count -> CLASSES.stream()
                        .filter(word -> count.path(word).asLong() > 0)
                        .map(word -> count.path(word).asLong() + " " + word))
                .collect(Collectors.joining(", "));
        return words.isEmpty() ? "none" : words;
    }
}
