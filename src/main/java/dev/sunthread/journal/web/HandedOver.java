package dev.sunthread.journal.web;

import dev.sunthread.access.AccessLog;
import dev.sunthread.access.AccessLog.Event;
import dev.sunthread.access.Callers;
import dev.sunthread.journal.ImportSummary;
import dev.sunthread.journal.Sender;
import org.springframework.stereotype.Component;

/** Notes in the access log who took journals in or out. */
@Component
class HandedOver {

    private final Callers callers;
    private final AccessLog log;

    HandedOver(Callers callers, AccessLog log) {
        this.callers = callers;
        this.log = log;
    }

    /** The caller as one who hands in what others said. */
    Sender over(String file) {
        return new Sender(callers.signedIn().mark(), file);
    }

    void tookIn(String file, ImportSummary summary) {
        log.note(Event.IMPORTED, over(file).file(), summary.toString());
    }

    void gaveOut() {
        log.note(Event.EXPORTED, "journal", null);
    }

    long restored(long entries) {
        log.note(Event.RESTORED, "journal", entries + " entries");
        return entries;
    }
}
