package dev.sunthread.kernel;

import java.time.Duration;

/** Says that something is not done now because too much is being done at once, and when to come again. */
public final class Busy extends Refused {

    private final Duration comeAgain;

    public Busy(String reason, String remedy, Duration comeAgain) {
        super(reason, remedy);
        this.comeAgain = comeAgain;
    }

    /** After how long it is worth asking again. */
    public Duration comeAgain() {
        return comeAgain;
    }
}
