package dev.sunthread.genealogy.web;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.StringJoiner;
import org.jspecify.annotations.Nullable;
import org.springframework.web.util.UriUtils;

/** Addresses of one question's answer: the page, the JSON and the CSV, with a choice of lines. */
final class TraceAddress {

    private final TraceRequest asked;

    TraceAddress(TraceRequest asked) {
        this.asked = asked;
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

    String flowJson() {
        return "/api/v1/traces/flow?" + parameters(LineChoice.ALL);
    }

    String parameters(LineChoice choice) {
        StringJoiner all = new StringJoiner("&");
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
        return all.toString();
    }

    private static @Nullable String word(@Nullable Enum<?> value) {
        return value == null ? null : value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static void add(StringJoiner all, String name, @Nullable Object value) {
        if (value != null && !value.toString().isEmpty()) {
            all.add(name + "=" + UriUtils.encode(value.toString(), StandardCharsets.UTF_8));
        }
    }
}
