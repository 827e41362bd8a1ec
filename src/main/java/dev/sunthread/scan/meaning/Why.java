package dev.sunthread.scan.meaning;

/** What may be remarked on a reading: in order, odd but clear, in doubt, or not readable. */
public enum Why {
    SEPARATORS_AS_TEXT("separators came as text and were taken for what they name", false),
    STRAY_CHARACTERS("something stands before the beginning of the label's data", false),
    CROPPED_HEADER("the beginning of the label's data is missing", true),
    CROPPED_END("the end of the label's data is missing; its last field may be incomplete", false),
    LOST_SEPARATORS("the separators between fields are lost; where a field ends is a guess", true),
    SEPARATOR_IN_VALUE("a separator stands inside a value", true),
    GUESSED_SYNTAX("nothing says that it is structured so; only its form suggests it", true),
    REPEATED("is there more than once; all are kept", false),
    EMPTY_FIELD("is empty", false),
    UNKNOWN_IDENTIFIER("is not a known identifier", true),
    WRONG_CHECK_DIGIT("has a wrong check digit: scan again, or read it aloud with a second person", true),
    WRONG_DATE("is not a date", true),
    WRONG_LENGTH("is longer or shorter than it may be", true),
    WRONG_CHARACTER("holds a character that may not stand there", true),
    EMPTY_VALUE("has no value", true),
    NOTHING_SCANNED("nothing was scanned", true),
    TOO_LONG("is longer than any label", true),
    UNKNOWN_SYMBOLOGY("begins with a symbology identifier that is not known", true),
    NOTHING_AFTER_SYMBOLOGY("holds a symbology identifier and nothing else", true),
    UNREAD_FORMAT("is in a format that is not read here", true),
    NO_LINK("is a web address, but no GS1 Digital Link", true),
    QUALIFIERS_OUT_OF_ORDER("does not belong behind what stands before it", true),
    CONTROL_CHARACTERS("holds control characters that say nothing", true);

    private final String words;
    private final boolean doubt;

    Why(String words, boolean doubt) {
        this.words = words;
        this.doubt = doubt;
    }

    public String words() {
        return words;
    }

    /** Whether a person has to confirm what was read. */
    public boolean isDoubt() {
        return doubt;
    }
}
