package dev.sunthread.catalog;

/**
 * A cure or test that an operation of a released route demands.
 *
 * @param definition the internal number of the recipe or specification
 * @param code its code
 * @param operation the operation that demands it
 */
public record Demand(Way way, long definition, String code, String operation) {

    /** What can be demanded. */
    public enum Way {
        CURE,
        TEST
    }
}
