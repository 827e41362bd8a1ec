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

    void judge(Fact<TestRunKind.Body> fact, long unit) {
        Judged judged = verdicts.judgeEntry(fact.entry()).get(fact.entry());
        if (judged == null || !judged.measured()) {
            return;
        }
        Verdict told = fact.body().verdict();
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
