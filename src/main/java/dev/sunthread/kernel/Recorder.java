package dev.sunthread.kernel;

import org.jspecify.annotations.Nullable;

/** Says who is recording right now, so that the ledger can note it beside whoever an envelope names as its actor. */
@FunctionalInterface
public interface Recorder {

    /** The mark of the signed-in person or of the machine; nothing for what the program does by itself. */
    @Nullable
    String mark();
}
