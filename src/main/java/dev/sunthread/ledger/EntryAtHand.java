package dev.sunthread.ledger;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** The entry that the current thread records: the first to name whatever is made known meanwhile. */
@Component
public class EntryAtHand {

    private final ThreadLocal<@Nullable Long> number = new ThreadLocal<>();

    /** @throws IllegalStateException if nothing is being recorded: names are made known by entries only */
    public long number() {
        Long known = number.get();
        if (known == null) {
            throw new IllegalStateException("nothing is being recorded that could name anything");
        }
        return known;
    }

    void whileRecording(long entry, Runnable recording) {
        Long before = number.get();
        number.set(entry);
        try {
            recording.run();
        } finally {
            number.set(before);
        }
    }
}
