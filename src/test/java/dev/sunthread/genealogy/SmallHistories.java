package dev.sunthread.genealogy;

import static dev.sunthread.genealogy.Certainty.CERTAIN;
import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.journal.Imports;
import dev.sunthread.journal.Sender;
import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.Envelope;
import dev.sunthread.ledger.EnvelopeHead;
import dev.sunthread.ledger.Manner;
import dev.sunthread.ledger.Sealer;
import dev.sunthread.testing.Ovens;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.testing.Supply;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * A plant for smallest histories, each with what truly was in what written beside it, and a record or two of it lost,
 * late, unreadable or taken back: nothing true is missed, nothing untrue is certain, and both directions agree.
 */
@SunthreadTest
abstract class SmallHistories {

    private static final Sender SENDER = new Sender("import", "handheld.ndjson");

    @Autowired
    Door door;

    @Autowired
    Imports imports;

    @Autowired
    Sealer sealer;

    @Autowired
    Traces traces;

    @Autowired
    JdbcClient jdbc;

    Plant plant;
    Supply supply;
    Ovens ovens;
    Asked asked;
    int told;
    final Set<String> lots = new TreeSet<>(List.of("A", "B"));
    final Set<String> units = new TreeSet<>(List.of("r1", "r2", "r3", "w1", "w2", "m1", "m2", "p1"));

    @BeforeEach
    void released() {
        plant = Plant.released(door);
        supply = new Supply(plant);
        ovens = Ovens.released(plant);
        asked = new Asked(traces);
        plant.receipt("1 06:00", "A", "ADH", "SUP-A");
        plant.receipt("1 06:00", "B", "ADH", "SUP-B");
        plant.birth("2 06:00", "RCV", "r1", "r2", "r3");
        plant.birth("2 06:00", "WALL", "w1", "w2");
        plant.birth("2 06:00", "MOD", "m1", "m2");
        plant.birth("2 06:00", "PANEL", "p1");
    }

    List<String> hashes(long known) {
        List<String> hashes = new ArrayList<>();
        for (String name : List.of("A", "B", "r1", "r2", "r3", "w1", "w2")) {
            for (Way way : Way.values()) {
                Root root = lots.contains(name) ? new Root.OfLot(name) : new Root.OfUnit(Plant.id(written(name)));
                hashes.add(traces.ask(new TraceQuestion(way, root, known, null, false))
                        .hash());
            }
        }
        return hashes;
    }

    void cured() {
        Map<String, Object> bond = op("bond", "ADH");
        bond.put("cures", List.of("CURE"));
        route("RCV", bond, op("coat"));
    }

    void keep(String line) {
        try {
            imports.takeLine(line.replace('\'', '"'), SENDER);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    void born(String serial) {
        units.add(serial);
    }

    void bornAt(String time, String serial, String station) {
        door("birth", time, Map.of("units", List.of(unit(serial)), "station", station));
    }

    void receive(String lot) {
        lots.add(lot);
        plant.receipt("1 06:00", lot, "ADH");
    }

    void places() {
        supply.structure("WALL", "1 RCV");
        supply.structure("MOD", "1 WALL");
        supply.structure("PANEL", "1 MOD");
    }

    void row(@Nullable String lot, @Nullable String container) {
        Map<String, Object> use = new TreeMap<>(Map.of("item", "ADH", "position", "V1"));
        if (lot != null) {
            use.put("lot", lot);
        }
        if (container != null) {
            use.put("container", container);
        }
        Map<String, Object> body = new TreeMap<>(Map.of("operation", "bond", "station", "BOND"));
        body.put("units", List.of(unit("r1"), unit("r2")));
        body.put("startedAt", "2026-03-10T10:00:00+01:00");
        body.put("uses", List.of(use));
        plant.say("step", "10:20", body);
    }

    void chargeFrom(String time, String lot, String container) {
        plant.say("charge", time, Map.of("lot", lot, "container", container, "station", "BOND", "position", "V1"));
    }

    void use(String time, Map<String, Object> use, String... serials) {
        plant.say(
                "step",
                time,
                Map.of(
                        "operation",
                        "bond",
                        "station",
                        "BOND",
                        "units",
                        Arrays.stream(serials).map(this::unit).toList(),
                        "uses",
                        List.of(use)));
    }

    void glue(String time, String unit, String lot) {
        use(time, Map.of("item", "ADH", "lot", lot), unit);
    }

    void step(String time, String operation, String unit) {
        plant.step(time, operation, item(unit), unit, List.of());
    }

    void cure(String start, String end, String run, String... named) {
        ovens.cure(start, end, run, Arrays.stream(named).map(this::written).toList(), List.of());
    }

    void install(String time, String child, String parent) {
        install(time, child, parent, "1");
    }

    void install(String time, String child, String parent, String position) {
        plant.install(time, written(child), written(parent), position);
    }

    void remove(String time, String child, String parent) {
        plant.remove(time, written(child), written(parent));
    }

    @SafeVarargs
    final void route(String item, Map<String, Object>... operations) {
        plant.say("route", "1 00:10", Map.of("item", item, "revision", "A", "operations", List.of(operations)));
    }

    static Map<String, Object> op(String code, String... items) {
        return new TreeMap<>(Map.of("operation", code, "name", code, "consumes", List.of(items)));
    }

    void door(String kind, String time, Map<String, Object> body) {
        var head = new EnvelopeHead("small-" + ++told, kind, 1, OffsetDateTime.parse(time), "op-1", "test");
        door.accept(Envelope.of(head, (ObjectNode) JsonMapper.shared().valueToTree(body)), Manner.TOLD);
    }

    Map<String, Object> unit(String serial) {
        return Plant.unit(written(serial));
    }

    String written(String serial) {
        return item(serial) + " " + serial;
    }

    static String item(String serial) {
        return switch (serial.charAt(0)) {
            case 'r' -> "RCV";
            case 'w' -> "WALL";
            case 'm' -> "MOD";
            default -> "PANEL";
        };
    }

    /** All that the lot truly was in: none of it is missed, and nothing else is certain. */
    void truth(String lot, String... in) {
        assertTrue(asked.lot(lot).ever(), in);
    }

    void truthOfRun(String run, String... in) {
        assertTrue(asked.scope(new Scope.CureRun(run)).ever(), in);
    }

    static void assertTrue(Map<String, Certainty> answer, String... in) {
        assertThat(answer).containsKeys(in);
        Map<String, Certainty> others = new TreeMap<>(answer);
        others.keySet().removeAll(List.of(in));
        assertThat(others).doesNotContainValue(CERTAIN);
    }

    @AfterEach
    void bothDirectionsAgree() {
        Map<String, Map<String, Certainty>> forward = new TreeMap<>();
        Map<String, Map<String, Certainty>> backward = new TreeMap<>();
        for (String name : names()) {
            forward.put(name, known(answered(Way.FORWARD, name)));
            backward.put(name, known(answered(Way.BACKWARD, name)));
        }
        List<String> differences = new ArrayList<>();
        for (String from : names()) {
            for (String to : names()) {
                @Nullable Certainty there = forward.getOrDefault(from, Map.of()).get(to);
                @Nullable Certainty back = backward.getOrDefault(to, Map.of()).get(from);
                if (there != back) {
                    differences.add(from + " -> " + to + " forward " + there + " backward " + back);
                }
            }
        }
        assertThat(differences).isEmpty();
    }

    Map<String, Certainty> known(Asked.Seen seen) {
        Map<String, Certainty> known = new TreeMap<>(seen.ever());
        known.keySet().retainAll(names());
        return known;
    }

    Asked.Seen answered(Way way, String name) {
        Root root = lots.contains(name) ? new Root.OfLot(name) : new Root.OfUnit(Plant.id(written(name)));
        return asked.ask(new TraceQuestion(way, root, null, null, false));
    }

    Set<String> names() {
        Set<String> names = new TreeSet<>(lots);
        names.addAll(units);
        return names;
    }
}
