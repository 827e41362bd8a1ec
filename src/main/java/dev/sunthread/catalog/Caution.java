package dev.sunthread.catalog;

/** What can hurt at an operation; local rules and trained people decide what to do about it. */
public enum Caution {
    UV,
    HEAT,
    VOLTAGE,
    CHEMICAL
}
