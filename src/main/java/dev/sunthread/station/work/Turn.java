package dev.sunthread.station.work;

import dev.sunthread.station.Say;
import dev.sunthread.station.Verdict;
import dev.sunthread.station.label.Label;

/** What one scan came to: what is in hand after it, and what is said of it. */
public record Turn(Work work, Verdict verdict) {

    static Turn accepted(Work work, String key, Object... with) {
        return new Turn(work, Verdict.accepted(Say.of(key, with)));
    }

    /** The same with a word on what else there is to know. */
    Turn noting(Say noted) {
        return new Turn(work, verdict.noting(noted));
    }

    /** What was scanned is not what comes now, or nothing recorded has that name. */
    static Turn notNow(Work work, Label label) {
        if (label instanceof Label.Unrecorded read) {
            return unrecorded(work, read);
        }
        return label instanceof Label.Unknown
                ? refused(work, Say.of("unknown", label.called()), Say.of("unknown.remedy"))
                : refused(work, Say.of("not-now", label.called()), Say.of("not-now.remedy"));
    }

    private static Turn unrecorded(Work work, Label.Unrecorded read) {
        return switch (read.thing()) {
            case SUPPLIER_LOT -> refused(work, Say.of("read.supplier-lot", read.name()), Say.of("read.receive"));
            case LOT -> refused(work, Say.of("read.lot", read.name()), Say.of("read.receive"));
            case CONTAINER -> refused(work, Say.of("read.container", read.name()), Say.of("read.receive"));
            case UNIT -> refused(work, Say.of("read.unit", read.name()), Say.of("read.scan-other"));
            case POSITION -> refused(work, Say.of("read.position", read.name()), Say.of("read.scan-other"));
            case STATION -> refused(work, Say.of("read.station", read.name()), Say.of("read.scan-other"));
            case BADGE -> refused(work, Say.of("read.badge"), Say.of("read.scan-other"));
            case PACKAGE -> refused(work, Say.of("read.package", read.name()), Say.of("read.scan-other"));
            case ITEM -> refused(work, Say.of("read.item", read.name()), Say.of("read.scan-other"));
            default -> refused(work, Say.of("read.other", read.text()), Say.of("read.scan-other"));
        };
    }

    /** Nothing changes; the sentence says why and the other what to do. */
    static Turn refused(Work work, Say why, Say remedy) {
        return new Turn(work, Verdict.refused(why, remedy));
    }
}
