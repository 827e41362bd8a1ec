package dev.sunthread.station.pass;

import dev.sunthread.kernel.RuleBroken;

/** Says that a rule forbids what a scan asks for, and what can be signed to have it passed. */
public class PassableRefusal extends RuleBroken {

    private final transient Passing passing;

    PassableRefusal(RuleBroken broken, Passing passing) {
        super(broken.rule(), broken.reason(), broken.remedy(), broken.about());
        this.passing = passing;
    }

    public Passing passing() {
        return passing;
    }
}
