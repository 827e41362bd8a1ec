package dev.sunthread.genealogy;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;

/** What is said in a random plant; the same seed under another name says the same of other things. */
final class RandomPlant {

    private static final int HAPPENINGS = 28;
    private static final List<String> KINDS = List.of(
            "charge",
            "charge",
            "charge",
            "charge",
            "discharge",
            "discharge",
            "clean-point",
            "step",
            "step",
            "step",
            "step",
            "step",
            "installation",
            "installation",
            "installation",
            "installation",
            "installation",
            "removal",
            "removal",
            "removal",
            "shipment",
            "return",
            "receipt",
            "birth");

    private final List<Said> said = new ArrayList<>();
    private final Map<String, String> kinds = new HashMap<>();
    private final Draw draw;
    private final RandomFacts facts;
    private final String name;
    private final int worstClock;

    private RandomPlant(long seed, String name, int worstClock) {
        this.draw = new Draw(new Random(seed), name);
        this.name = name;
        this.worstClock = worstClock;
        this.facts = new RandomFacts(draw);
    }

    /** Everything said, in an order in which it can be told. */
    static List<Said> of(long seed, String name, int worstClock) {
        RandomPlant plant = new RandomPlant(seed, name, worstClock);
        plant.release();
        plant.receiveAndBear();
        for (int i = 0; i < HAPPENINGS; i++) {
            plant.somethingHappens();
        }
        return toldInOrder(plant.said, new Random(seed + 1));
    }

    /** The same in another order: stations come first, and what is taken back before what takes it back. */
    static List<Said> toldInOrder(List<Said> said, Random random) {
        Map<String, Said> byId = new HashMap<>();
        said.forEach(one -> byId.put(one.id(), one));
        List<Said> shuffled = new ArrayList<>(said);
        Collections.shuffle(shuffled, random);
        Set<Said> told = new LinkedHashSet<>();
        said.stream().filter(one -> one.kind().equals("station")).forEach(told::add);
        shuffled.forEach(one -> tell(one, byId, told));
        return List.copyOf(told);
    }

    private static void tell(Said one, Map<String, Said> byId, Set<Said> told) {
        String target = one.target();
        if (target != null) {
            tell(Objects.requireNonNull(byId.get(target)), byId, told);
        }
        told.add(one);
    }

    private void release() {
        for (String station : Draw.STATIONS) {
            say("station", OffsetDateTime.parse("2026-03-01T00:00:00Z"), facts.station(station, clock(), "A"));
            if (draw.chance(3)) {
                say("station", draw.moment(), facts.station(station, clock(), "B"));
            }
        }
    }

    private int clock() {
        return Math.min(worstClock, draw.any(List.of(0, 0, 5, 30, 60, 120)));
    }

    private void receiveAndBear() {
        for (String lot : Draw.LOTS) {
            if (!draw.chance(8)) {
                say("receipt", draw.moment(), facts.receipt(lot, lot.startsWith("A") ? "ADH" : "PRI"));
            }
        }
        for (String unit : Draw.UNITS) {
            if (!draw.chance(8)) {
                say("birth", draw.moment(), facts.birth(unit));
            }
        }
    }

    private void somethingHappens() {
        if (draw.chance(8)) {
            takeBack(draw.any(said.stream()
                    .filter(one -> !one.kind().equals("void") && !one.kind().equals("station"))
                    .toList()));
        } else {
            String kind = draw.any(KINDS);
            OffsetDateTime at = draw.moment();
            say(kind, at, facts.body(kind, at));
        }
    }

    private void takeBack(Said target) {
        Map<String, Object> body = new HashMap<>(Map.of("entry", target.id(), "why", "scanned by mistake"));
        String kind = Objects.requireNonNull(kinds.get(target.id()));
        if (draw.chance(2)) {
            say("void", draw.moment(), body);
            return;
        }
        OffsetDateTime at = draw.moment();
        body.put("body", facts.body(kind, at));
        if (kind.equals("step") || draw.chance(2)) {
            body.put("occurredAt", Draw.written(at));
        }
        kinds.put(say("correction", draw.moment(), body), kind);
    }

    private String say(String kind, OffsetDateTime at, Map<String, Object> body) {
        String id = name + "-" + (said.size() + 1);
        said.add(new Said(id, kind, at, body));
        kinds.put(id, kind);
        return id;
    }
}
