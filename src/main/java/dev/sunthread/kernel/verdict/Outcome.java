package dev.sunthread.kernel.verdict;

import java.util.Locale;

/** What can be said of a thing that was judged, from the best to the worst. */
public enum Outcome {
    /** What was measured shows that every limit is kept, whatever the known errors are. */
    PASSED,
    /** What was measured shows neither that the limits are kept nor that one is broken. */
    NOT_PROVEN,
    /** What was measured shows that a limit is broken, whatever the known errors are. */
    FAILED;

    /** The worse of the two. */
    public Outcome or(Outcome other) {
        return compareTo(other) >= 0 ? this : other;
    }

    public String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
