package dev.sunthread.genealogy;

import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;

/** The internal numbers of what envelopes name. */
interface Numbers {

    /** The number of an envelope's entry. */
    long entry(String id);

    long item(String number);

    long station(String code);

    long position(String station, String code);

    /** A recipe for cure runs, a specification for test runs. */
    long definition(TraceKind run, String code);

    /** A lot, container, carrier or run by its name, a unit by its serial. */
    TraceRef node(TraceKind kind, String name);
}
