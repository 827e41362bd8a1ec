package dev.sunthread.genealogy.position;

import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.genealogy.walk.Reason;
import dev.sunthread.kernel.TraceRef;
import org.jspecify.annotations.Nullable;

/**
 * What the records of a position tell about one lot on it: strictly between {@code sureAfter} and {@code sureBefore}
 * it surely was the one loaded; from {@code mayBeFrom} to {@code mayBeTo}, both included, it may have been; and it had
 * surely left at {@code left}.
 *
 * @param isByScan whether only a use that scanned the lot shows it, and no charge or discharge
 */
record Loading(
        TraceRef lot,
        @Nullable Long item,
        long mayBeFrom,
        long sureAfter,
        long sureBefore,
        long mayBeTo,
        Moment left,
        Reason record,
        boolean isByScan) {

    boolean mayServe(Moment use) {
        return mayHaveBegunBy(use) && use.early() <= mayBeTo;
    }

    boolean surelyServes(Moment use) {
        return sureAfter < use.early() && use.late() < sureBefore;
    }

    boolean mayHaveBegunBy(Moment use) {
        return mayBeFrom <= use.late();
    }

    boolean isOf(long wanted) {
        return item != null && item == wanted;
    }

    /** What the record says, told as a reason of this kind. */
    Reason reason(String kind) {
        return new Reason(kind, record.named(), record.entry());
    }
}
