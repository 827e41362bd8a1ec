package dev.sunthread.genealogy;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.genealogy.walk.Arrival;
import dev.sunthread.genealogy.walk.Edge;
import dev.sunthread.kernel.TraceKind;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * Prints by which rules the trace tells what is not true: for each pair that is told and not true, the edges of its path
 * that make it as weak as it is. {@code -Dsunthread.excess="lost step,doubled scan"} names the kinds of fault.
 */
@EnabledIfSystemProperty(named = "sunthread.excess", matches = ".+")
class ExcessTests {

    private static final int PLANTS = Integer.getInteger("sunthread.simulated", 40);
    private static final long SEED = Long.getLong("sunthread.seed", 0) * 1_000_000;
    private static final int LINES = 30;

    @Test
    void printsTheRulesThatTellTooMuch() {
        for (String kind : System.getProperty("sunthread.excess", "").split(",")) {
            Map<String, Integer> rules = new HashMap<>();
            Tally tally = SimulationCheck.of(
                    Objects.requireNonNull(FaultKinds.held().get(kind.strip()), kind),
                    SEED,
                    PLANTS,
                    arrival -> rules.merge(rule(arrival), 1, Integer::sum));
            assertThat(rules.values().stream().mapToInt(Integer::intValue).sum())
                    .isEqualTo(tally.excess.values().stream()
                            .mapToInt(Long::intValue)
                            .sum());
            print(kind, tally, rules);
        }
    }

    private static void print(String kind, Tally tally, Map<String, Integer> rules) {
        System.out.printf("%s: %d true pairs, %s too much%n", kind, tally.truePairs, tally.excess);
        rules.entrySet().stream()
                .sorted(Comparator.comparing((Map.Entry<String, Integer> rule) -> -rule.getValue()))
                .limit(LINES)
                .forEach(rule -> System.out.printf("%8d  %s%n", rule.getValue(), rule.getKey()));
    }

    private static String rule(Arrival arrival) {
        List<Edge> path = arrival.path();
        return arrival.certainty()
                + path.stream()
                        .filter(edge -> edge.certainty() == arrival.certainty())
                        .map(ExcessTests::rule)
                        .collect(Collectors.joining(" > ", ": ", ""));
    }

    private static String rule(Edge edge) {
        String key = edge.reason().key();
        Map<String, String> named = edge.reason().named();
        String what = named.getOrDefault("position", named.getOrDefault("operation", ""));
        boolean isOfMade = edge.to().kind() != TraceKind.UNIT;
        return switch (key) {
            case "candidate" -> edge.from().kind() + " is a candidate";
            case "not-recorded" -> "for " + (isOfMade ? "what " + edge.to().kind() + " was made of" : what);
            default -> key;
        };
    }
}
