package dev.sunthread.station.work;

import dev.sunthread.station.Say;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Takes back the last scan: what it recorded is voided, and what was in hand before it is in hand again. */
public final class Undoing {

    private Undoing() {}

    public static Turn of(Work work, Work before, Recording recording) {
        if (work.equals(before)) {
            return Turn.refused(work, Say.of("undo.nothing"), Say.of("undo.nothing.remedy"));
        }
        List<String> last = new ArrayList<>(work.last());
        Collections.reverse(last);
        last.forEach(entry -> recording.record("void", Bodies.taking(entry, "Undone at the station at once")));
        return Turn.accepted(before.recorded(List.of()), last.isEmpty() ? "undo.put-back" : "undo.done", last.size());
    }
}
