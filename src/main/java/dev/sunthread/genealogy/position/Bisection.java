package dev.sunthread.genealogy.position;

import java.util.function.IntPredicate;

/** Looks in a sorted list for the place where something begins to hold. */
final class Bisection {

    private Bisection() {}

    /** The first index of so many from which on it holds; their number if it holds for none. Logarithmic time. */
    static int first(int size, IntPredicate holds) {
        int low = 0;
        int high = size;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (holds.test(middle)) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }
}
