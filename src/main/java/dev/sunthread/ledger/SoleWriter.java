package dev.sunthread.ledger;

import java.util.HashMap;
import java.util.Map;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Lets one transaction record alone until its end; it then needs no lock on anything it writes about. */
@Component
public class SoleWriter {

    /** Any number, the same in every instance; whoever opens an entry holds it with all others that do. */
    static final long LOCK = 7_305_114_884L;

    private static final String SOLE = "sole writer";

    private final Remembered remembered;
    private final JdbcClient jdbc;

    SoleWriter(Remembered remembered, JdbcClient jdbc) {
        this.remembered = remembered;
        this.jdbc = jdbc;
    }

    /** Waits until nobody else records, and makes others wait until the current transaction ends. */
    void begin() {
        jdbc.sql("SELECT pg_advisory_xact_lock(?)").param(LOCK).query().listOfRows();
        remembered.of(SOLE).put(SOLE, SOLE);
    }

    /** Whether the current transaction records alone. */
    public boolean isSole() {
        return !remembered.of(SOLE).isEmpty();
    }

    /**
     * What the current transaction knows of a thing that nobody else can change now; nothing if others can. Whoever
     * writes such a thing clears it; a withdrawal clears all.
     */
    public <K, V> Map<K, V> known(String thing) {
        return isSole() ? remembered.of(SOLE + " of " + thing) : new HashMap<>();
    }

    void forget() {
        boolean sole = isSole();
        remembered.forget();
        if (sole) {
            remembered.of(SOLE).put(SOLE, SOLE);
        }
    }
}
