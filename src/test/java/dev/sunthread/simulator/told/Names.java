package dev.sunthread.simulator.told;

import java.util.Map;
import java.util.Objects;

/** What people write for what they see: every name begins with the plant's, and units go by their serials. */
final class Names {

    private final String plant;
    private final Map<String, String> serials;
    private final Map<String, String> items;

    Names(String plant, Map<String, String> serials, Map<String, String> items) {
        this.plant = plant;
        this.serials = serials;
        this.items = items;
    }

    String of(String name) {
        return plant + "-" + name;
    }

    String serial(String body) {
        return of(Objects.requireNonNull(serials.get(body), body));
    }

    Map<String, Object> unit(String body) {
        return Map.of("item", of(item(body)), "serial", serial(body));
    }

    /** The item of a unit, without the plant's name. */
    String item(String body) {
        return Objects.requireNonNull(items.get(body), body);
    }
}
