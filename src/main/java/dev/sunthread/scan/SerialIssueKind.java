package dev.sunthread.scan;

import dev.sunthread.catalog.Item;
import dev.sunthread.catalog.Items;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.Known;
import dev.sunthread.ledger.body.Field;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Serials were given out on labels before their units came about. */
@Component
class SerialIssueKind implements Kind<SerialIssueKind.Body> {

    record Body(
            @Field("The item, tracked by serial") String item,

            @Field(value = "The serials, each for one unit to come", atLeast = 1, atMost = 1000)
            List<String> serials) {}

    private final Items items;
    private final JdbcClient jdbc;

    SerialIssueKind(Items items, JdbcClient jdbc) {
        this.items = items;
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "serial-issue";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "Serials of an item were given out on labels, so that nobody gives them out again.";
    }

    @Override
    public void record(Fact<Body> fact) {
        Item item = items.serialised(fact.body().item(), "body.item");
        serialsAreIssuedOnce(fact, item);
        for (String serial : fact.body().serials().stream().distinct().toList()) {
            jdbc.sql("INSERT INTO scan.issued_serial (entry, item, serial) VALUES (?, ?, ?)")
                    .params(fact.entry(), item.id(), serial)
                    .update();
        }
    }

    private void serialsAreIssuedOnce(Fact<Body> fact, Item item) {
        // two who print at once: the second waits and is told
        jdbc.sql("SELECT pg_advisory_xact_lock(hashtextextended('scan.issued_serial', ?)) IS NULL")
                .param(item.id())
                .query(Boolean.class)
                .single();
        List<String> issued = jdbc.sql("SELECT s.serial FROM scan.issued_serial s WHERE s.item = :item"
                        + " AND s.serial = ANY (:serials) AND " + Known.now("s.entry") + " ORDER BY 1")
                .param("item", item.id())
                .param("serials", fact.body().serials().toArray(String[]::new))
                .query(String.class)
                .list();
        if (!issued.isEmpty()) {
            fact.breaks(
                    "serial-is-issued-once",
                    "Serial " + issued.get(0) + " of " + item.number() + " was given out on a label before",
                    "Ask for the next serials again");
        }
    }
}
