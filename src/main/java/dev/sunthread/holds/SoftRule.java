package dev.sunthread.holds;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * A rule that a released list may let a person pass by signature. Rules on holds, on identity and on what goes where are
 * not among them: nobody passes these.
 */
public enum SoftRule {
    EARLIER_OPERATIONS_ARE_DONE_BEFORE_THE_NEXT,
    OPERATION_IS_DONE_ONCE,
    STATION_MAY_DO_THE_OPERATION,
    OPERATION_BEGINS_AFTER_ITS_DWELL,
    OPERATION_BEGINS_WITHIN_ITS_WINDOW,
    OPERATOR_IS_QUALIFIED,
    LOT_IS_NOT_EXPIRED,
    CONTAINER_IS_WITHIN_ITS_OPEN_LIFE,
    CONTAINER_IS_WITHIN_ITS_OUT_LIFE;

    /** The rule of this name; empty if it is none that could ever be passed. */
    public static Optional<SoftRule> of(String word) {
        return Arrays.stream(values()).filter(rule -> rule.word().equals(word)).findFirst();
    }

    /** The rule's name in findings and refusals. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
