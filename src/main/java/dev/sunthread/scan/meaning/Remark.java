package dev.sunthread.scan.meaning;

/**
 * Something to tell a person about a reading.
 *
 * @param about the identifier or piece of text it is about; may be empty
 */
public record Remark(Why why, String about) {

    public static Remark of(Why why) {
        return new Remark(why, "");
    }

    /** The remark as a sentence without its full stop. */
    public String words() {
        return about.isEmpty() ? why.words() : about + " " + why.words();
    }
}
