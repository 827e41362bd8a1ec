package dev.sunthread.catalog;

import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.TextForm;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Equipment was checked, in one of the ways there are, and was good or bad. */
@Needs(Right.DEFINE)
class EquipmentCheckKind implements Kind<EquipmentCheckKind.Body> {

    /** What came out of a check. */
    enum Verdict {
        GOOD,
        BAD
    }

    /** How equipment is checked, with what an envelope of it says. */
    enum Way {
        CALIBRATION("Equipment was compared with a standard and found good or bad."),
        VERIFICATION("Equipment was tried on something known and found good or bad.");

        private final String meaning;

        Way(String meaning) {
            this.meaning = meaning;
        }
    }

    record Body(
            @Field("The equipment") String equipment,
            @Field("What came out") Verdict verdict,

            @Field("What was measured by it; absent if the check is good for all that it measures") @Nullable
            String specification,

            @Field(value = "What was done, and where its record is", text = TextForm.NOTE)
            String evidence,

            @Field("By how much it was found to read above the truth, if that was measured")
            List<FoundError> errors,

            @Field("What a radiometer read under a lamp") @Nullable
            Radiometer radiometer) {}

    private final Way way;
    private final ReleasedCodes codes;
    private final FoundErrors errors;
    private final ApplicationEventPublisher events;
    private final JdbcClient jdbc;

    EquipmentCheckKind(
            Way way, ReleasedCodes codes, FoundErrors errors, ApplicationEventPublisher events, JdbcClient jdbc) {
        this.way = way;
        this.codes = codes;
        this.errors = errors;
        this.events = events;
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return way.name().toLowerCase(Locale.ROOT);
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return way.meaning;
    }

    @Override
    public void record(Fact<Body> fact) {
        Body body = fact.body();
        String specification = body.specification();
        long equipment = codes.equipment(body.equipment(), "body.equipment");
        jdbc.sql("""
                        INSERT INTO catalog.equipment_check
                          (entry, equipment, way, specification, verdict, evidence, checked_at)
                        VALUES (?, ?, ?, ?, ?, ?, ?)
                        """)
                .params(fact.entry(), equipment, way.name())
                .param(specification == null ? null : codes.specification(specification, "body.specification"))
                .params(body.verdict().name(), body.evidence(), fact.occurredAt())
                .update();
        errors.record(fact.entry(), body.errors());
        if (body.radiometer() != null) {
            record(fact.entry(), body.radiometer());
        }
        events.publishEvent(new EquipmentChecked(fact, equipment, body.equipment(), body.verdict() == Verdict.BAD));
    }

    @Override
    public void withdrawn(long entry) {
        jdbc.sql("SELECT q.id, q.code FROM catalog.equipment_check c JOIN catalog.equipment q ON q.id = c.equipment"
                        + " WHERE c.entry = ?")
                .param(entry)
                .query((row, number) -> new EquipmentChecked(null, row.getLong(1), row.getString(2), false))
                .list()
                .forEach(events::publishEvent);
    }

    private void record(long entry, Radiometer radiometer) {
        jdbc.sql("INSERT INTO catalog.check_radiometer (entry, irradiance, band, lamp_hours) VALUES (?, ?, ?, ?)")
                .params(entry, radiometer.irradiance())
                .param(radiometer.band())
                .param(radiometer.lampHours())
                .update();
    }
}
