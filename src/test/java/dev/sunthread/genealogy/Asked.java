package dev.sunthread.genealogy;

import dev.sunthread.kernel.UnitId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Asks traces and gives answers in a form that tests compare: what is reached, by name, with its class. */
record Asked(Traces traces, @Nullable Long cutoff, boolean isWider) {

    Asked(Traces traces) {
        this(traces, null, false);
    }

    Asked asKnownAt(long position) {
        return new Asked(traces, position, isWider);
    }

    Asked wider() {
        return new Asked(traces, cutoff, true);
    }

    Seen scope(Scope scope) {
        return ask(Way.FORWARD, new Root.OfScope(scope));
    }

    Seen unit(UnitId id) {
        return ask(Way.BACKWARD, new Root.OfUnit(id));
    }

    Seen lot(String number) {
        return ask(Way.FORWARD, new Root.OfLot(number));
    }

    Seen supplierLot(String text) {
        return ask(Way.FORWARD, new Root.OfSupplierLot(text));
    }

    Seen unit(String item, String serial) {
        return ask(Way.BACKWARD, new Root.OfUnit(UnitId.of(null, item, serial)));
    }

    private Seen ask(Way way, Root root) {
        return ask(new TraceQuestion(way, root, cutoff, null, isWider));
    }

    Seen ask(TraceQuestion question) {
        AnswerHead head = traces.ask(question);
        List<AnswerLine> lines = new ArrayList<>();
        traces.each(head.id(), LineFilter.ALL, lines::add);
        return new Seen(head, lines);
    }

    /** An answer with all its lines. */
    record Seen(AnswerHead head, List<AnswerLine> lines) {

        /** The same without the ways that are told: of several that prove as much, any may be. */
        Seen withoutWords() {
            return new Seen(
                    head,
                    lines.stream()
                            .map(line -> new AnswerLine(
                                    line.kind(),
                                    line.level(),
                                    line.item(),
                                    line.name(),
                                    line.issuer(),
                                    line.ever(),
                                    line.now(),
                                    line.atShipment(),
                                    line.at(),
                                    "",
                                    List.of(),
                                    line.place(),
                                    line.within(),
                                    line.spot(),
                                    line.holds(),
                                    line.shipments()))
                            .toList());
        }

        Map<String, Certainty> ever() {
            return by(AnswerLine::ever);
        }

        Map<String, Certainty> now() {
            return by(AnswerLine::now);
        }

        Map<String, Certainty> atShipment() {
            return by(AnswerLine::atShipment);
        }

        AnswerLine line(String name) {
            return lines.stream()
                    .filter(line -> line.name().equals(name))
                    .findFirst()
                    .orElseThrow();
        }

        private Map<String, Certainty> by(Function<AnswerLine, @Nullable Certainty> time) {
            Map<String, Certainty> classes = new TreeMap<>();
            for (AnswerLine line : lines) {
                Certainty certainty = time.apply(line);
                if (certainty != null) {
                    classes.put(line.name(), certainty);
                }
            }
            return classes;
        }
    }
}
