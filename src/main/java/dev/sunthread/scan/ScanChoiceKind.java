package dev.sunthread.scan;

import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** A person chose what a scanned text means. */
@Component
class ScanChoiceKind implements Kind<ScanChoice> {

    private final JdbcClient jdbc;

    ScanChoiceKind(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "scan-choice";
    }

    @Override
    public Class<ScanChoice> body() {
        return ScanChoice.class;
    }

    @Override
    public String meaning() {
        return "A scanned text named nothing exactly, or could mean several things; a person said what it means. The next"
                + " time it is offered, never taken by itself.";
    }

    @Override
    public void record(Fact<ScanChoice> fact) {
        ScanChoice choice = fact.body();
        jdbc.sql("INSERT INTO scan.choice (entry, scanned, what, name, item, issuer) VALUES (?, ?, ?, ?, ?, ?)")
                .params(fact.entry(), storable(choice.scanned()), choice.what().name(), storable(choice.name()))
                .param(choice.item())
                .param(choice.issuer())
                .update();
    }

    /** The database keeps no NUL character; the ledger's own text does. */
    static String storable(String text) {
        return text.replace('\0', '\uFFFD');
    }
}
