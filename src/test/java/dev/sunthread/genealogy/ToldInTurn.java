package dev.sunthread.genealogy;

import dev.sunthread.journal.EveryKind;
import dev.sunthread.ledger.Envelope;
import dev.sunthread.ledger.EnvelopeReader;
import dev.sunthread.simulator.SimulatedPlant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;

/** A journal of every kind, a random plant and a simulated one with afterthoughts, in turn, so that much is told late. */
final class ToldInTurn {

    private static final Set<String> FIRST = Set.of("item", "station", "recipe", "specification", "equipment");
    private static final List<String> TARGETS = List.of("entry", "line");

    private ToldInTurn() {}

    static List<Envelope> of(Random random) {
        List<List<Envelope>> queues = new ArrayList<>();
        queues.add(new ArrayList<>(
                EveryKind.lines().stream().map(EnvelopeReader::read).toList()));
        queues.add(envelopes(RandomPlant.of(random.nextLong(), "p1", 60)));
        List<Said> simulated = SimulatedTrace.said(SimulatedPlant.of(
                        random.nextLong(),
                        "s1",
                        Objects.requireNonNull(FaultKinds.held().get("many at once")))
                .told());
        List<Said> all = new ArrayList<>(simulated);
        all.addAll(Afterthoughts.of("s1", simulated, random));
        queues.add(envelopes(inAnyOrder(all, random)));
        return inTurn(queues, random);
    }

    private static List<Envelope> inTurn(List<List<Envelope>> queues, Random random) {
        List<Envelope> told = new ArrayList<>();
        while (!queues.isEmpty()) {
            List<Envelope> queue = queues.get(random.nextInt(queues.size()));
            told.add(queue.remove(0));
            queues.removeIf(List::isEmpty);
        }
        return told;
    }

    private static List<Envelope> envelopes(List<Said> said) {
        return new ArrayList<>(said.stream().map(Said::envelope).toList());
    }

    // what others name comes first; then anything, what is taken back or settled before what does it
    private static List<Said> inAnyOrder(List<Said> said, Random random) {
        Map<String, Said> byId = new HashMap<>();
        said.forEach(one -> byId.put(one.id(), one));
        Set<Said> told = new LinkedHashSet<>(said.stream()
                .filter(one -> one.id().contains("-def-") && FIRST.contains(one.kind()))
                .toList());
        List<Said> rest = new ArrayList<>(said);
        Collections.shuffle(rest, random);
        rest.forEach(one -> add(one, byId, told));
        return List.copyOf(told);
    }

    private static void add(Said one, Map<String, Said> byId, Set<Said> told) {
        for (String target : TARGETS) {
            Said before = byId.get(String.valueOf(one.body().get(target)));
            if (before != null) {
                add(before, byId, told);
            }
        }
        told.add(one);
    }
}
