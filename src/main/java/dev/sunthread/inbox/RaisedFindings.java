package dev.sunthread.inbox;

import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.EntryAccepted;
import dev.sunthread.ledger.RaisedFinding;
import org.springframework.context.event.EventListener;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Writes the findings that were raised while an entry was recorded, in the same transaction. */
@Component
class RaisedFindings {

    private final JdbcClient jdbc;

    RaisedFindings(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @EventListener
    void keep(EntryAccepted accepted) {
        int ordinal = 0;
        for (RaisedFinding finding : accepted.findings()) {
            keep(accepted.entry(), ++ordinal, finding);
        }
    }

    private void keep(long entry, int ordinal, RaisedFinding finding) {
        jdbc.sql("INSERT INTO inbox.finding (entry, ordinal, rule, sentence, remedy) VALUES (?, ?, ?, ?, ?)")
                .params(entry, ordinal, finding.rule(), finding.sentence(), finding.remedy())
                .update();
        for (TraceRef subject : finding.about().stream().distinct().toList()) {
            jdbc.sql("INSERT INTO inbox.finding_subject (entry, ordinal, kind, subject) VALUES (?, ?, ?, ?)")
                    .params(entry, ordinal, subject.kind().name(), subject.id())
                    .update();
        }
    }
}
