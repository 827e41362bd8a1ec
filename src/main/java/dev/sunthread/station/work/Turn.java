package dev.sunthread.station.work;

import dev.sunthread.station.Say;
import dev.sunthread.station.Verdict;
import dev.sunthread.station.label.Label;

/** What one scan came to: what is in hand after it, and what is said of it. */
public record Turn(Work work, Verdict verdict) {

    static Turn accepted(Work work, String key, Object... with) {
        return new Turn(work, Verdict.accepted(Say.of(key, with)));
    }

    /** What was scanned is not what comes now, or nothing recorded has that name. */
    static Turn notNow(Work work, Label label) {
        return label instanceof Label.Unknown
                ? refused(work, Say.of("unknown", label.called()), Say.of("unknown.remedy"))
                : refused(work, Say.of("not-now", label.called()), Say.of("not-now.remedy"));
    }

    /** Nothing changes; the sentence says why and the other what to do. */
    static Turn refused(Work work, Say why, Say remedy) {
        return new Turn(work, Verdict.refused(why, remedy));
    }
}
