package dev.sunthread.demo.line;

import dev.sunthread.demo.told.Notebook;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** Finished receivers in stock; people take one of the older ones, not strictly the oldest. */
public final class Stock {

    private static final int WITHIN_REACH = 18;

    private final Notebook notes;
    private final List<String> receivers = new ArrayList<>();

    public Stock(Notebook notes) {
        this.notes = notes;
    }

    public void add(Collection<String> serials) {
        receivers.addAll(serials);
    }

    public String take() {
        return receivers.remove(notes.between(0, Math.min(WITHIN_REACH, receivers.size()) - 1));
    }
}
