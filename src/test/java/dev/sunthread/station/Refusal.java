package dev.sunthread.station;

import java.util.List;
import java.util.function.Consumer;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * What is scanned at a station so that a rule refuses it.
 *
 * @param rule the rule, as the document of rules names it
 * @param told what is told of the plant beforehand
 * @param scans what is scanned before, each of which is taken
 * @param meanwhile what happens elsewhere before the last scan
 * @param breaks what is scanned last
 * @param says of the reason and of what to do
 */
record Refusal(
        String rule,
        Consumer<LineFloor> told,
        String station,
        List<String> scans,
        Meanwhile meanwhile,
        String breaks,
        List<String> says) {

    /** What happens elsewhere while work is in hand. */
    interface Meanwhile {
        void happens(LineFloor floor, JdbcClient jdbc);
    }

    static Refusal of(String rule, Consumer<LineFloor> told, String station, String scans, String... says) {
        List<String> all = List.of(scans.split(" > "));
        int last = all.size() - 1;
        return new Refusal(
                rule, told, station, all.subList(0, last), (floor, jdbc) -> {}, all.get(last), List.of(says));
    }

    Refusal after(Meanwhile other) {
        return new Refusal(rule, told, station, scans, other, breaks, says);
    }

    @Override
    public String toString() {
        return rule;
    }
}
