package dev.sunthread.demo.line;

import dev.sunthread.demo.floor.Piece;
import dev.sunthread.demo.told.Notebook;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** Finished receivers in stock; people take one of the older ones, not strictly the oldest. */
final class Stock {

    private static final int WITHIN_REACH = 18;

    private final Notebook notes;
    private final List<Piece> receivers = new ArrayList<>();
    private final List<Piece> laidReady = new ArrayList<>();
    private final List<Piece> laidAside = new ArrayList<>();

    Stock(Notebook notes) {
        this.notes = notes;
    }

    void add(Collection<Piece> pieces) {
        receivers.addAll(pieces);
    }

    /** Lays one aside, to be taken first on the next day. */
    void layAside(Piece piece) {
        laidAside.add(piece);
    }

    void beginDay() {
        laidReady.addAll(laidAside);
        laidAside.clear();
    }

    int size() {
        return receivers.size() + laidReady.size();
    }

    Piece take() {
        return laidReady.isEmpty()
                ? receivers.remove(notes.between(0, Math.min(WITHIN_REACH, receivers.size()) - 1))
                : laidReady.remove(0);
    }
}
