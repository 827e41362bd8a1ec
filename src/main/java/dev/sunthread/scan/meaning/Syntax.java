package dev.sunthread.scan.meaning;

/** By which rules a text was read. */
public enum Syntax {
    /** Text without structure, matched with the patterns of released items. */
    PLAIN,
    /** GS1 element string. */
    GS1,
    /** GS1 Digital Link. */
    DIGITAL_LINK,
    /** EPC as a pure identity URI. */
    EPC,
    /** Data identifiers of ANSI MH10.8.2, in format 06 of ISO/IEC 15434 or alone. */
    DATA_IDENTIFIERS
}
