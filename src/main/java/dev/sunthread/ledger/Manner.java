package dev.sunthread.ledger;

/** Whether an envelope asks for something to be done or tells what was done. */
public enum Manner {
    /** Asked at a station, online: a broken rule stops it. */
    DO,
    /** Told afterwards, offline, by import or by a machine: a broken rule is recorded as a finding. */
    TOLD
}
