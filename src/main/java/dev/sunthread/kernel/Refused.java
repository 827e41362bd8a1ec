package dev.sunthread.kernel;

/** Says that something asked for is not done: what is wrong, and what the person can do about it. */
public class Refused extends RuntimeException {

    private final String remedy;

    public Refused(String reason, String remedy) {
        super(reason);
        this.remedy = remedy;
    }

    /** What is wrong, as a sentence for the person who asked. */
    public String reason() {
        return String.valueOf(getMessage());
    }

    /** What to do next, as a sentence for the person who asked. */
    public String remedy() {
        return remedy;
    }
}
