package dev.sunthread.paper;

import dev.sunthread.catalog.Item;
import dev.sunthread.catalog.Items;
import dev.sunthread.catalog.RouteSteps;
import dev.sunthread.catalog.Stations;
import dev.sunthread.kernel.Refused;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.Known;
import dev.sunthread.ledger.body.Contradiction;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.Unreadable;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Blank records were printed. */
@Component
class FormSheetKind implements Kind<FormSheetKind.Body> {

    record Body(
            @Field("What each of the records is for") FormKind form,

            @Field("The station where they are to be used") String station,

            @Field("The item whose route has the operation, if they are for one") @Nullable
            String item,

            @Field("The operation, if they are for one") @Nullable
            String operation,

            @Field(value = "The ids of the records in their order, all of one sheet", atLeast = 1, atMost = 60)
            List<String> records) {

        Body {
            boolean isOperation = form == FormKind.OPERATION;
            if (isOperation != (item != null) || isOperation != (operation != null)) {
                throw new Contradiction(
                        "operation",
                        "does not fit the form",
                        "Give item and operation for an operation, and only then");
            }
            if (records.stream().map(Body::sheet).distinct().count() > 1) {
                throw new Contradiction("records", "are of several sheets", "Give the ids of one sheet");
            }
        }

        private static String sheet(String record) {
            try {
                RecordId id = RecordId.read(record);
                if (id.text().equals(record)) {
                    return id.sheet();
                }
            } catch (Refused notAnId) {
                // said below in the words of the field
            }
            throw new Contradiction(
                    "records", "has \"" + record + "\", which is no id of a record", "Give it as printed");
        }
    }

    private final Stations stations;
    private final Items items;
    private final RouteSteps routes;
    private final JdbcClient jdbc;

    FormSheetKind(Stations stations, Items items, RouteSteps routes, JdbcClient jdbc) {
        this.stations = stations;
        this.items = items;
        this.routes = routes;
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "form-sheet";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "Blank records were printed for a time without the network; each waits until it is entered or void.";
    }

    @Override
    public void record(Fact<Body> fact) {
        Body body = fact.body();
        long station = stations.named(body.station(), "body.station").id();
        Long item = operationIsOfAReleasedRoute(fact);
        recordIdIsGivenOutOnce(fact);
        jdbc.sql("""
                        INSERT INTO paper.sheet (entry, code, form, station, item, operation, printed_at)
                        VALUES (?, ?, ?, ?, ?, ?, ?)
                        """)
                .params(fact.entry(), RecordId.read(body.records().get(0)).sheet())
                .params(body.form().name(), station)
                .param(item)
                .param(body.operation())
                .param(fact.occurredAt())
                .update();
        jdbc.sql("""
                        INSERT INTO paper.printed_record (entry, ordinal, record)
                        SELECT ?, r.ordinal, r.record FROM unnest(?) WITH ORDINALITY AS r (record, ordinal)
                        """)
                .params(fact.entry(), body.records().toArray(String[]::new))
                .update();
    }

    private @Nullable Long operationIsOfAReleasedRoute(Fact<Body> fact) {
        Body body = fact.body();
        if (body.item() == null || body.operation() == null) {
            return null;
        }
        Item item = items.serialised(body.item(), "body.item");
        if (routes.of(item.id(), body.operation(), fact.occurredAt()).isEmpty()) {
            throw Unreadable.at(
                    "body.operation",
                    "names operation \"" + body.operation() + "\", which the route of " + item.number()
                            + " does not have",
                    "Name an operation of the route in force");
        }
        return item.id();
    }

    private void recordIdIsGivenOutOnce(Fact<Body> fact) {
        List<String> given = jdbc.sql("SELECT r.record FROM paper.printed_record r WHERE r.record = ANY (:records) AND "
                        + Known.now("r.entry") + " ORDER BY 1")
                .param("records", fact.body().records().toArray(String[]::new))
                .query(String.class)
                .list();
        if (!given.isEmpty()) {
            fact.breaks(
                    "record-id-is-given-out-once",
                    "Record " + given.get(0) + " was printed before",
                    "Print the sheet again; a record that was printed twice tells two happenings");
        }
    }
}
