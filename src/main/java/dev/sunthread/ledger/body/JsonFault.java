package dev.sunthread.ledger.body;

import tools.jackson.core.JacksonException;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.exc.UnexpectedEndOfInputException;

/** Why a text is no JSON, in words for whoever wrote it: what the reader's own message says names parts of the program. */
public final class JsonFault {

    private JsonFault() {}

    /** What is wrong, as the end of a sentence. */
    public static String words(JacksonException fault) {
        if (fault instanceof UnexpectedEndOfInputException) {
            return "it ends too early";
        }
        if (fault instanceof StreamConstraintsException) {
            return "it is nested too deeply, or a name, text or number in it is too long";
        }
        String said = String.valueOf(fault.getOriginalMessage());
        if (said.startsWith("Duplicate")) {
            return "a field stands in it twice";
        }
        if (said.startsWith("Trailing token")) {
            return "something follows behind its end";
        }
        return place(fault.getLocation());
    }

    private static String place(TokenStreamLocation at) {
        return at == null || at.getColumnNr() < 1
                ? "it is not what is asked for"
                : "something does not belong at character " + at.getColumnNr();
    }
}
