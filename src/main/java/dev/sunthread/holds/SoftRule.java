package dev.sunthread.holds;

import java.util.Locale;

/**
 * A rule that a released list may let a person pass by signature. Rules on holds, on identity and on what goes where are
 * not among them: nobody passes these.
 */
public enum SoftRule {
    EARLIER_OPERATIONS_ARE_DONE_BEFORE_THE_NEXT,
    STATION_MAY_DO_THE_OPERATION,
    OPERATION_BEGINS_AFTER_ITS_DWELL,
    OPERATION_BEGINS_WITHIN_ITS_WINDOW,
    OPERATOR_IS_QUALIFIED,
    LOT_IS_NOT_EXPIRED,
    CONTAINER_IS_WITHIN_ITS_OPEN_LIFE,
    CONTAINER_IS_WITHIN_ITS_OUT_LIFE;

    /** The rule's name in findings and refusals. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
