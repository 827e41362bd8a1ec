package dev.sunthread.ledger.body;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tools.jackson.core.JacksonException;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.exc.UnexpectedEndOfInputException;

/** Why a text is no JSON, in words for whoever wrote it: what the reader's own message says names parts of the program. */
public final class JsonFault {

    /** The words by which the reader of JSON says it. */
    private static final Pattern TWICE = Pattern.compile("Duplicate [^\"]*\"(.*)\"", Pattern.DOTALL);

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
        Matcher twice = TWICE.matcher(said);
        if (twice.lookingAt()) {
            return "field \"" + twice.group(1) + "\" stands in it twice";
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
