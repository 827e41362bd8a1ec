package dev.sunthread.catalog;

import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.TextForm;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Releases a revision of a fault with the tests able to see it. */
@Component
@Needs(Right.DEFINE)
class FaultKind implements Definition<FaultKind.Body> {

    record Body(
            @Field("The fault's code") String fault,
            @Field("The revision that is released") String revision,

            @Field(value = "What people call it", text = TextForm.NAME)
            String name,

            @Field("The specifications of the tests able to see it; none if no test is")
            List<String> tests) {}

    private final ReleasedCodes codes;
    private final JdbcClient jdbc;

    FaultKind(ReleasedCodes codes, JdbcClient jdbc) {
        this.codes = codes;
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "fault";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "A revision of a fault is released: what can be wrong with a unit, and which tests are able to see it.";
    }

    @Override
    public void record(Fact<Body> fact) {
        Body body = fact.body();
        codes.release(fact, "fault", body.fault(), body.revision(), body.name());
        for (int i = 0; i < body.tests().size(); i++) {
            long specification = codes.specification(body.tests().get(i), "body.tests[" + i + "]");
            jdbc.sql("INSERT INTO catalog.fault_test (entry, specification) VALUES (?, ?) ON CONFLICT DO NOTHING")
                    .params(fact.entry(), specification)
                    .update();
        }
    }
}
