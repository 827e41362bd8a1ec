package dev.sunthread.electrical;

import dev.sunthread.catalog.Demand;
import dev.sunthread.catalog.judging.KeptPhrase;
import dev.sunthread.electrical.judging.TestVerdicts;
import dev.sunthread.production.Prerequisite;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;

/**
 * A demanded test is met if the last valid one of the unit, or of what it was inside of then, passed,
 * and began once the step that demands it had, the last one if it was done again. Where the revision in
 * force states limits, a pass that was told counts only if the raw data show it: without raw data nothing is proven.
 */
@Component
class DemandedTests implements Prerequisite {

    private final LastTests tests;
    private final TestVerdicts verdicts;

    DemandedTests(LastTests tests, TestVerdicts verdicts) {
        this.tests = tests;
        this.verdicts = verdicts;
    }

    @Override
    public Demand.Way way() {
        return Demand.Way.TEST;
    }

    @Override
    public Set<Long> met(Demand demand, Map<Long, OffsetDateTime> units, OffsetDateTime at) {
        return judged(demand, units, at).stream()
                .filter(LastTests.Last::passed)
                .map(LastTests.Last::unit)
                .collect(Collectors.toSet());
    }

    private List<LastTests.Last> judged(Demand demand, Map<Long, OffsetDateTime> units, OffsetDateTime at) {
        List<LastTests.Last> last = tests.since(demand.definition(), units, at);
        List<Long> unknown = last.stream()
                .filter(test -> Boolean.FALSE.equals(test.kept()))
                .map(LastTests.Last::entry)
                .distinct()
                .toList();
        unknown.forEach(verdicts::judgeEntry);
        return unknown.isEmpty() ? last : tests.since(demand.definition(), units, at);
    }

    @Override
    public Optional<String> shortfall(Demand demand, Map.Entry<Long, OffsetDateTime> unit, OffsetDateTime at) {
        return tests.since(demand.definition(), Map.ofEntries(unit), at).stream()
                .findFirst()
                .map(DemandedTests::told);
    }

    private static String told(LastTests.Last last) {
        boolean failed = last.verdict().equals(Verdict.FAIL.name());
        return "test run " + last.run() + (failed ? " failed" : " is not proven")
                + (last.said() == null
                        ? ""
                        : ": " + KeptPhrase.read(last.said()).english());
    }
}
