package dev.sunthread.genealogy.scope;

import dev.sunthread.kernel.Refused;
import java.util.ArrayList;
import java.util.List;

/** Notes where joining scopes did not what a person may have meant: they join suspects before the walk, never units. */
public final class Joinings {

    private final List<Refused> notes = new ArrayList<>();

    /** An {@code all} whose parts each name something, and that names nothing. */
    public void allFoundNothing() {
        notes.add(new Refused(
                "No suspect falls under every part of all: it joins suspects, such as lots and runs, never units",
                "Ask for what is in all of their answers instead: /compare/joined, or /api/v1/traces/joined"));
    }

    /** An {@code except} that leaves everything. */
    public void exceptTookNothing() {
        notes.add(
                new Refused(
                        "Except takes nothing away: it takes suspects, such as lots and runs, never units, and names none of these",
                        "Ask for what is in one answer and not in the other instead: /compare/joined, or /api/v1/traces/joined"));
    }

    /** An {@code except} that leaves nothing. */
    public void exceptTookAll() {
        notes.add(new Refused("Except takes every suspect away", "Name less in without"));
    }

    List<String> words() {
        return notes.stream().map(Refused::reason).distinct().toList();
    }

    /** Why nothing falls under a scope. */
    Refused nothing() {
        return notes.stream()
                .findFirst()
                .orElseGet(() -> new Refused(
                        "Nothing that is recorded falls under the scope", "Widen its windows or its names"));
    }
}
