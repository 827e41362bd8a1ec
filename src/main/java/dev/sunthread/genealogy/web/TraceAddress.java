package dev.sunthread.genealogy.web;

import dev.sunthread.genealogy.AnswerHead;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.web.util.UriUtils;

/** Addresses of one answer, at its cut-off: the page, the JSON and the flow, with a choice of lines. */
final class TraceAddress {

    private final TraceRequest asked;

    TraceAddress(TraceRequest asked) {
        this.asked = asked;
    }

    /** Of the answer to a question, however much is recorded later. */
    static TraceAddress of(AnswerHead head, TraceRequest asked) {
        return new TraceAddress(asked.knownAt(head.question().cutoff()));
    }

    /** The page of the same question with everything recorded then. */
    String again(LineChoice choice) {
        return new TraceAddress(asked.knownAt(null)).page(choice);
    }

    String page(LineChoice choice) {
        return "/trace?" + parameters(choice) + "#lines";
    }

    String json(LineChoice choice) {
        return "/api/v1/traces?" + parameters(choice);
    }

    String flow() {
        return "/trace/flow?" + parameters(LineChoice.ALL);
    }

    String flowAgain() {
        return new TraceAddress(asked.knownAt(null)).flow();
    }

    String flowJson() {
        return "/api/v1/traces/flow?" + parameters(LineChoice.ALL);
    }

    /** The parameters of the question. */
    Map<String, String> question() {
        Map<String, String> all = new LinkedHashMap<>();
        add(all, "way", word(asked.way()));
        add(all, "lot", asked.lot());
        add(all, "supplierLot", asked.supplierLot());
        add(all, "item", asked.item());
        add(all, "serial", asked.serial());
        add(all, "issuer", asked.issuer());
        add(all, "scope", asked.scope());
        add(all, "wider", asked.wider());
        add(all, "cutoff", asked.cutoff());
        add(all, "at", asked.at());
        return all;
    }

    String parameters(LineChoice choice) {
        Map<String, String> all = question();
        add(all, "level", choice.level());
        add(all, "when", word(choice.when()));
        add(all, "certainty", word(choice.certainty()));
        add(all, "place", choice.place());
        add(all, "held", choice.held());
        add(all, "outermost", choice.outermost());
        add(all, "text", choice.text());
        add(all, "sort", word(choice.sort()));
        add(all, "descending", choice.descending());
        add(all, "page", choice.page());
        return all.entrySet().stream()
                .map(one -> one.getKey() + "=" + UriUtils.encode(one.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
    }

    private static @Nullable String word(@Nullable Enum<?> value) {
        return value == null ? null : value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static void add(Map<String, String> all, String name, @Nullable Object value) {
        if (value != null && !value.toString().isEmpty()) {
            all.put(name, value.toString());
        }
    }
}
