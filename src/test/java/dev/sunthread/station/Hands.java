package dev.sunthread.station;

/** Whoever works at stations: a person at a tablet, or a program. */
interface Hands {

    /** Goes to a station. */
    void at(String station) throws Exception;

    /** Scans something that is taken, and hears this of it. */
    void scan(String text, String says) throws Exception;

    /** Material is loaded at a position of the station. */
    default void load(String position, String lot) throws Exception {
        scan(position, position);
        scan(lot, lot + " is loaded at " + position);
    }
}
