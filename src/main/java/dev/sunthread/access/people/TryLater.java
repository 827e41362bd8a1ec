package dev.sunthread.access.people;

import java.time.Duration;
import org.springframework.security.authentication.LockedException;

/** Says that there were too many attempts, and how long to wait before the next one counts. */
public class TryLater extends LockedException {

    private final Duration wait;

    TryLater(Duration wait) {
        super("too many attempts");
        this.wait = wait;
    }

    /** The seconds to wait, at least one. */
    public long seconds() {
        return Math.max(1, wait.toSeconds() + 1);
    }
}
