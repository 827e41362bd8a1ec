package dev.sunthread.journal;

import dev.sunthread.materials.Charges;
import dev.sunthread.production.Stays;
import dev.sunthread.production.UnscannedUses;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Compares the state tables with the history they follow, and writes them anew from it. */
@Service
public class StateCheck {

    private final Charges charges;
    private final Stays stays;
    private final UnscannedUses uses;

    StateCheck(Charges charges, Stays stays, UnscannedUses uses) {
        this.charges = charges;
        this.stays = stays;
        this.uses = uses;
    }

    /** Every row of state that differs from what history says; empty if none does. */
    @Transactional(readOnly = true)
    public List<String> differences() {
        return Stream.of(
                        charges.differencesFromHistory(), stays.differencesFromHistory(), uses.differencesFromHistory())
                .flatMap(List::stream)
                .toList();
    }

    void report(Consumer<String> out) {
        List<String> differences = differences();
        differences.forEach(out);
        out.accept(differences.isEmpty() ? "State agrees with history" : differences.size() + " rows of state differ");
    }

    /** Writes all state anew from history. */
    @Transactional
    public void rebuild(Consumer<String> out) {
        charges.rebuild();
        stays.rebuild();
        uses.rebuild();
        out.accept("State is rebuilt from history");
    }
}
