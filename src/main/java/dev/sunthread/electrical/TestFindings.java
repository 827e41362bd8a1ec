package dev.sunthread.electrical;

import dev.sunthread.catalog.judging.Judged;
import dev.sunthread.electrical.judging.TestVerdicts;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.kernel.verdict.Outcome;
import dev.sunthread.ledger.Fact;
import org.springframework.stereotype.Component;

/** Judges tests when they are recorded, and says where their raw data and what was told of them differ. */
@Component
class TestFindings {

    private final TestVerdicts verdicts;

    TestFindings(TestVerdicts verdicts) {
        this.verdicts = verdicts;
    }

    /** Whether the unit may go on: by the raw data where the revision in force states limits, else as told; an invalid test says nothing. */
    boolean judge(Fact<TestRunKind.Body> fact, long unit) {
        Judged judged = verdicts.judgeEntry(fact.entry()).get(fact.entry());
        Verdict told = fact.body().verdict();
        if (judged != null && judged.measured()) {
            noteDifference(fact, unit, judged, told);
        }
        boolean isGood =
                told == Verdict.PASS && (judged == null || judged.judgement().outcome() == Outcome.PASSED);
        return isGood || told == Verdict.INVALID;
    }

    private static void noteDifference(Fact<TestRunKind.Body> fact, long unit, Judged judged, Verdict told) {
        boolean denied = told == Verdict.PASS && judged.judgement().outcome() == Outcome.FAILED
                || told == Verdict.FAIL && judged.judgement().outcome() == Outcome.PASSED;
        if (denied) {
            fact.shows(
                    "told-verdict-is-that-of-the-raw-data",
                    "Test run " + fact.body().run() + " was told to "
                            + (told == Verdict.PASS
                                    ? "pass, but fails by its raw data: "
                                    : "fail, but passes by its raw data: ")
                            + judged.judgement().sentence().english(),
                    "Find out which is right; if the raw data are of another unit, void the record",
                    TraceRef.unit(unit));
        }
    }
}
