package dev.sunthread.web.compare;

import dev.sunthread.web.PageAddress;
import java.util.Locale;
import java.util.Map;

/** Addresses of joined answers at their cut-off. */
record JoinedAddress(JoinedRequest asked, long cutoff) {

    String join() {
        return asked.joined().name().toLowerCase(Locale.ROOT);
    }

    PageAddress json() {
        return at("/api/v1/traces/joined");
    }

    PageAddress file() {
        return at("/compare/joined").with("format", "csv");
    }

    private PageAddress at(String path) {
        return new PageAddress(path, Map.of())
                .with("of", asked.of())
                .with("join", join())
                .with("level", asked.ofLevel())
                .with(
                        "certainty",
                        asked.ofClass() == null ? null : asked.ofClass().toLowerCase(Locale.ROOT))
                .with("cutoff", cutoff);
    }
}
