package dev.sunthread.web.judging;

import dev.sunthread.catalog.judging.JudgingAgain;
import dev.sunthread.cure.judging.CuresAgain;
import dev.sunthread.electrical.judging.TestsAgain;
import dev.sunthread.kernel.Refused;
import org.springframework.stereotype.Component;

/** Which runs are judged again by which module: {@code cure} and {@code test}. */
@Component
class JudgedKinds {

    static final String CURE = "cure";
    static final String TEST = "test";

    private final CuresAgain cures;
    private final TestsAgain tests;

    JudgedKinds(CuresAgain cures, TestsAgain tests) {
        this.cures = cures;
        this.tests = tests;
    }

    /** @throws Refused if there is no such kind of run */
    JudgingAgain<?> of(String kind) {
        return switch (kind) {
            case CURE -> cures;
            case TEST -> tests;
            default -> throw new Refused("There are no runs of kind \"" + kind + "\"", "Say cure or test");
        };
    }
}
