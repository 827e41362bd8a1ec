package dev.sunthread.web.label;

/** What a label can be printed of. */
public enum LabelOf {
    UNIT,
    LOT,
    CONTAINER,
    CARRIER,
    STATION,
    POSITION,
    BADGE,
    COMMAND
}
