package dev.sunthread.catalog;

import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.Unreadable;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Releases the order of operations by which an item is built. */
@Component
@Needs(Right.DEFINE)
class RouteKind implements Definition<RouteKind.Body> {

    record Body(
            @Field("The item that is built by it") String item,
            @Field("The revision that is released") String revision,

            @Field(value = "The operations in their order", atLeast = 1, atMost = 500)
            List<RouteOperation> operations) {}

    private final Items items;
    private final Revisions revisions;
    private final RouteOperations operations;
    private final JdbcClient jdbc;

    RouteKind(Items items, Revisions revisions, RouteOperations operations, JdbcClient jdbc) {
        this.items = items;
        this.revisions = revisions;
        this.operations = operations;
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "route";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "A revision of a route is released: the operations that build a unit of the item, what each takes in,"
                + " and which cures and tests it demands.";
    }

    @Override
    public void record(Fact<Body> fact) {
        Body body = fact.body();
        operationIsNamedOnce(body);
        windowsFollowEarlierOperations(body);
        long item = items.serialised(body.item(), "body.item").id();
        revisions.revisionIsReleasedOnce("route_revision", "item", item, body.revision());
        jdbc.sql("INSERT INTO catalog.route_revision (entry, item, revision, effective_at) VALUES (?, ?, ?, ?)")
                .params(fact.entry(), item, body.revision(), fact.occurredAt())
                .update();
        revisions.changed("route_revision");
        for (int i = 0; i < body.operations().size(); i++) {
            operations.record(fact.entry(), i, body.operations().get(i));
        }
    }

    private static void operationIsNamedOnce(Body body) {
        Set<String> seen = new HashSet<>();
        for (RouteOperation operation : body.operations()) {
            if (!seen.add(operation.operation())) {
                throw Unreadable.at(
                        "body.operations",
                        "names operation \"" + operation.operation() + "\" twice",
                        "Give each operation of a route a code of its own");
            }
        }
    }

    private static void windowsFollowEarlierOperations(Body body) {
        Set<String> earlier = new HashSet<>();
        for (int i = 0; i < body.operations().size(); i++) {
            Set<String> open = new HashSet<>(earlier);
            for (RouteWindow window : body.operations().get(i).windows()) {
                if (!open.remove(window.after())) {
                    throw Unreadable.at(
                            "body.operations[" + i + "].windows",
                            "names \"" + window.after() + "\", which is no earlier operation or was named before",
                            "Name each earlier operation of the route at most once");
                }
            }
            earlier.add(body.operations().get(i).operation());
        }
    }
}
