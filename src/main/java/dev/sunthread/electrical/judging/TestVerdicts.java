package dev.sunthread.electrical.judging;

import dev.sunthread.catalog.FoundErrors;
import dev.sunthread.catalog.Specifications;
import dev.sunthread.catalog.judging.Runs;
import dev.sunthread.catalog.judging.Verdicts;
import dev.sunthread.catalog.specification.SpecificationTerms;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Verdicts on test runs. */
@Component
public class TestVerdicts extends Verdicts<SpecificationTerms> {

    TestVerdicts(Specifications specifications, TestJudge judge, FoundErrors errors, JdbcClient jdbc) {
        super(Runs.TESTS, specifications, judge, errors, jdbc);
    }
}
