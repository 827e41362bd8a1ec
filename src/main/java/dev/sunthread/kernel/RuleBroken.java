package dev.sunthread.kernel;

import java.util.List;

/** Says that something asked for is not done because a rule forbids it, and what it is about. */
public class RuleBroken extends Refused {

    private final String rule;
    private final transient List<TraceRef> about;

    public RuleBroken(String rule, String reason, String remedy, List<TraceRef> about) {
        super(reason, remedy);
        this.rule = rule;
        this.about = List.copyOf(about);
    }

    /** The rule that forbids it, by its name. */
    public String rule() {
        return rule;
    }

    /** The lots, containers and units that it is about. */
    public List<TraceRef> about() {
        return about;
    }
}
