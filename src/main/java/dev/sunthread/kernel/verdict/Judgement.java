package dev.sunthread.kernel.verdict;

import java.util.List;

/**
 * What came out when a run was judged.
 *
 * @param sentence why
 * @param criteria every value with its limits
 * @param remarks what was odd about the records, in words
 */
public record Judgement(Outcome outcome, Phrase sentence, List<Criterion> criteria, List<Phrase> remarks) {

    /** The worst of the criteria decides; without any, nothing is proven. */
    public static Judgement of(List<Criterion> criteria, List<Phrase> remarks) {
        if (criteria.isEmpty()) {
            return notProven(Phrase.of("judged.nothing-stated"));
        }
        Outcome worst = criteria.stream().map(Criterion::outcome).reduce(Outcome.PASSED, Outcome::or);
        return new Judgement(worst, sentence(worst, criteria), List.copyOf(criteria), List.copyOf(remarks));
    }

    /** Nothing was measured, or nothing could be made of it. */
    public static Judgement notProven(Phrase why) {
        return new Judgement(Outcome.NOT_PROVEN, why, List.of(), List.of());
    }

    private static Phrase sentence(Outcome worst, List<Criterion> criteria) {
        if (worst == Outcome.PASSED) {
            return criteria.size() == 1
                    ? criteria.get(0).sentence()
                    : Phrase.of(
                            "judged.all",
                            String.valueOf(criteria.size()),
                            nearest(criteria).sentence());
        }
        return criteria.stream()
                .filter(criterion -> criterion.outcome() == worst)
                .map(Criterion::sentence)
                .reduce((one, next) -> Phrase.of("judged.and", one, next))
                .orElseThrow();
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
