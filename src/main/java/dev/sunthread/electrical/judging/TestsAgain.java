package dev.sunthread.electrical.judging;

import dev.sunthread.catalog.judging.JudgingAgain;
import dev.sunthread.catalog.specification.SpecificationTerms;
import java.time.Clock;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.core.task.TaskExecutor;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/** Test runs judged again. */
@Component
public class TestsAgain extends JudgingAgain<SpecificationTerms> {

    TestsAgain(
            TestVerdicts verdicts,
            JdbcClient jdbc,
            @Qualifier("applicationTaskExecutor") TaskExecutor executor,
            TransactionTemplate transaction,
            Clock clock) {
        super(verdicts, jdbc, executor, transaction, clock);
    }
}
