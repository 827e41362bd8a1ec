package dev.sunthread.materials;

import dev.sunthread.kernel.Refused;
import dev.sunthread.ledger.Acceptance;
import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.Manner;
import dev.sunthread.ledger.RaisedFinding;
import dev.sunthread.testing.Plant;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Says through the door what happens to lots and containers; lots are of adhesive {@code ADH}, in grams. */
public final class Store {

    public final Plant plant;

    private Store(Plant plant) {
        this.plant = plant;
    }

    /** A store with 100 g each of the lots {@code A} and {@code B}, and an item {@code LOW} for what is regraded. */
    public static Store stocked(Door door) {
        Store store = new Store(Plant.released(door));
        store.plant.item("LOW", "lot", null, "g");
        store.plant.receipt("1 06:00", "A", "ADH");
        store.plant.receipt("1 06:00", "B", "ADH");
        return store;
    }

    /** Containers filled, each written as its label, or its label and grams. */
    public Acceptance fill(String time, String lot, String... containers) {
        var fillings =
                Arrays.stream(containers).map(text -> grams("label", text)).toList();
        return plant.say("container", time, Map.of("lot", lot, "containers", fillings));
    }

    public Acceptance move(String time, String container, String storage) {
        return plant.say(
                "container-move",
                time,
                Map.of("container", container, "place", storage + " place", "storage", storage));
    }

    /** A lot made of others, each written as its number, or its number and grams. */
    public Acceptance blend(String time, String lot, String... components) {
        return plant.say("blend", time, blended(lot, components));
    }

    /** The body of a blend. */
    public static Map<String, Object> blended(String lot, String... components) {
        return Map.of(
                "lot",
                lot,
                "item",
                "ADH",
                "way",
                "blend",
                "components",
                Arrays.stream(components).map(text -> grams("lot", text)).toList());
    }

    public Acceptance split(String time, String lot, String... into) {
        return plant.say(
                "split",
                time,
                Map.of(
                        "lot",
                        lot,
                        "into",
                        Arrays.stream(into).map(text -> grams("lot", text)).toList()));
    }

    public Acceptance merge(String time, String into, String... lots) {
        return plant.say("merge", time, Map.of("lots", List.of(lots), "into", into));
    }

    /** One of the acts {@code count, issue, stock-return, waste, sample} on grams of a lot. */
    public Acceptance act(String kind, String time, String lot, String grams) {
        return plant.say(kind, time, Map.of("lot", lot, "quantity", grams, "unitOfMeasure", "g"));
    }

    public Acceptance end(String time, String lot, String why) {
        return plant.say("lot-ending", time, Map.of("lot", lot, "why", why));
    }

    public Acceptance hold(String time, String lot) {
        return plant.say("hold", time, Map.of("lots", List.of(lot), "reason", "to be looked at"));
    }

    /** The rules that were broken by what was said. */
    public static List<String> broken(Acceptance accepted) {
        return accepted.findings().stream().map(RaisedFinding::rule).toList();
    }

    /** Why it is refused when it is asked to be done. */
    public String refusal(String kind, String time, Map<String, Object> body) {
        try {
            plant.say(kind, time, body, Manner.DO);
            return "not refused";
        } catch (Refused e) {
            return e.reason();
        }
    }

    /** The body with another field. */
    public static Map<String, Object> with(Map<String, Object> body, String field, Object value) {
        Map<String, Object> more = new TreeMap<>(body);
        more.put(field, value);
        return more;
    }

    private static Map<String, Object> grams(String name, String text) {
        String[] parts = text.split(" ");
        Map<String, Object> named = Map.of(name, parts[0]);
        return parts.length == 1
                ? named
                : Stream.of(named)
                        .map(one -> with(one, "quantity", parts[1]))
                        .map(one -> with(one, "unitOfMeasure", "g"))
                        .findFirst()
                        .orElseThrow();
    }
}
