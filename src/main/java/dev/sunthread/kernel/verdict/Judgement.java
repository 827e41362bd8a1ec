package dev.sunthread.kernel.verdict;

import java.util.List;
import java.util.stream.Collectors;

/**
 * What came out when a run was judged.
 *
 * @param sentence why, in one sentence for people
 * @param criteria every value with its limits
 * @param remarks what was odd about the records, in words
 */
public record Judgement(Outcome outcome, String sentence, List<Criterion> criteria, List<String> remarks) {

    /** The worst of the criteria decides; without any, nothing is proven. */
    public static Judgement of(List<Criterion> criteria, List<String> remarks) {
        if (criteria.isEmpty()) {
            return notProven("The revision states nothing that could be judged");
        }
        Outcome worst = criteria.stream().map(Criterion::outcome).reduce(Outcome.PASSED, Outcome::or);
        return new Judgement(worst, sentence(worst, criteria), List.copyOf(criteria), List.copyOf(remarks));
    }

    /** Nothing was measured, or nothing could be made of it. */
    public static Judgement notProven(String why) {
        return new Judgement(Outcome.NOT_PROVEN, why, List.of(), List.of());
    }

    private static String sentence(Outcome worst, List<Criterion> criteria) {
        if (worst == Outcome.PASSED) {
            return criteria.size() == 1
                    ? criteria.get(0).sentence()
                    : "All " + criteria.size() + " criteria are met; nearest to its limit: "
                            + nearest(criteria).sentence();
        }
        return criteria.stream()
                .filter(criterion -> criterion.outcome() == worst)
                .map(Criterion::sentence)
                .collect(Collectors.joining("; "));
    }

    /** The criterion whose margin is the least part of its limit. */
    private static Criterion nearest(List<Criterion> criteria) {
        return criteria.stream()
                .min((one, other) -> Double.compare(closeness(one), closeness(other)))
                .orElseThrow();
    }

    private static double closeness(Criterion criterion) {
        Limits limits = criterion.limits();
        Double limit = limits.least() == null ? limits.most() : limits.least();
        return limit == null || criterion.value() == null
                ? Double.POSITIVE_INFINITY
                : limits.margin(criterion.value()) / Math.max(Math.abs(limit), 1e-12);
    }
}
