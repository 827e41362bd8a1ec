package dev.sunthread.catalog;

import dev.sunthread.catalog.RouteOperation.Alternate;
import dev.sunthread.catalog.RouteOperation.Reach;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Writes the operations of a route with all that each takes in and demands. */
@Component
class RouteOperations {

    private final Items items;
    private final ReleasedCodes codes;
    private final RouteTerms terms;
    private final JdbcClient jdbc;

    RouteOperations(Items items, ReleasedCodes codes, RouteTerms terms, JdbcClient jdbc) {
        this.items = items;
        this.codes = codes;
        this.terms = terms;
        this.jdbc = jdbc;
    }

    void record(long entry, int index, RouteOperation operation) {
        String path = "body.operations[" + index + "]";
        jdbc.sql("""
                        INSERT INTO catalog.route_operation
                          (entry, sequence, operation, name, unit_alone, qualified, online_only)
                        VALUES (?, ?, ?, ?, ?, ?, ?)
                        """)
                .params(entry, index + 1, operation.operation(), operation.name())
                .param(operation.reach() == Reach.UNIT_ALONE)
                .params(Boolean.TRUE.equals(operation.qualified()), Boolean.TRUE.equals(operation.onlineOnly()))
                .update();
        operation.consumes().forEach(number -> recordConsumption(entry, operation, number, path));
        operation.alternates().forEach(alternate -> recordAlternate(entry, operation, alternate, path));
        operation.values().forEach(bounds -> recordBounds(entry, operation, bounds));
        for (String cure : operation.cures()) {
            recordDemand(entry, operation, codes.recipe(cure, path + ".cures"), null);
        }
        for (String test : operation.tests()) {
            recordDemand(entry, operation, null, codes.specification(test, path + ".tests"));
        }
        terms.record(entry, operation, path);
    }

    private void recordConsumption(long entry, RouteOperation operation, String number, String path) {
        jdbc.sql(
                        "INSERT INTO catalog.route_consumption (entry, operation, item) VALUES (?, ?, ?) ON CONFLICT DO NOTHING")
                .params(entry, operation.operation(), item(number, path + ".consumes"))
                .update();
    }

    private void recordAlternate(long entry, RouteOperation operation, Alternate alternate, String path) {
        jdbc.sql("""
                        INSERT INTO catalog.route_alternate (entry, operation, item, alternate) VALUES (?, ?, ?, ?)
                        ON CONFLICT DO NOTHING
                        """)
                .params(entry, operation.operation())
                .params(item(alternate.item(), path + ".alternates"), item(alternate.alternate(), path + ".alternates"))
                .update();
    }

    private void recordBounds(long entry, RouteOperation operation, ValueBounds bounds) {
        jdbc.sql("""
                        INSERT INTO catalog.route_value (entry, operation, value, unit_of_measure, least, most)
                        VALUES (?, ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING
                        """)
                .params(entry, operation.operation(), bounds.value(), bounds.unitOfMeasure())
                .param(bounds.least())
                .param(bounds.most())
                .update();
    }

    private void recordDemand(
            long entry, RouteOperation operation, @Nullable Long recipe, @Nullable Long specification) {
        jdbc.sql("""
                        INSERT INTO catalog.route_demand (entry, operation, recipe, specification) VALUES (?, ?, ?, ?)
                        ON CONFLICT DO NOTHING
                        """)
                .params(entry, operation.operation())
                .param(recipe)
                .param(specification)
                .update();
    }

    private long item(String number, String path) {
        return items.named(number, path).id();
    }
}
