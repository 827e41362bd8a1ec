package dev.sunthread.station.pass;

import dev.sunthread.holds.Passes;
import dev.sunthread.holds.SoftRule;
import dev.sunthread.kernel.RuleBroken;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.kernel.UnitId;
import dev.sunthread.production.UnitName;
import dev.sunthread.station.work.Recording;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Finds which refusals may be passed by the list that is in force, and names what they are about. */
@Component
public class PassableRules {

    private final Passes passes;
    private final JdbcClient jdbc;

    PassableRules(Passes passes, JdbcClient jdbc) {
        this.passes = passes;
        this.jdbc = jdbc;
    }

    /**
     * The refusal with what can be signed about it, or as it is if nobody may pass the rule.
     *
     * @param text the scan that it refuses
     */
    public RuleBroken of(RuleBroken broken, String text, Recording recording) {
        Optional<SoftRule> rule = SoftRule.of(broken.rule())
                .filter(soft -> passes.mayBePassed(soft, recording.at())
                        && !broken.about().isEmpty());
        return rule.isEmpty()
                ? broken
                : new PassableRefusal(
                        broken,
                        new Passing(
                                broken.rule(),
                                text,
                                recording.operation(),
                                units(broken.about()),
                                names(broken.about(), TraceKind.LOT, "SELECT number FROM materials.lot"),
                                names(broken.about(), TraceKind.CONTAINER, "SELECT label FROM materials.container"),
                                false));
    }

    private List<UnitName> units(List<TraceRef> about) {
        return jdbc.sql(
                        "SELECT i.number, u.serial, u.issuer FROM production.unit u JOIN catalog.item i ON i.id = u.item"
                                + " WHERE u.id = ANY (?) ORDER BY u.id")
                .param(ids(about, TraceKind.UNIT))
                .query((row, number) -> UnitName.of(UnitId.of(row.getString(3), row.getString(1), row.getString(2))))
                .list();
    }

    private List<String> names(List<TraceRef> about, TraceKind kind, String select) {
        return jdbc.sql(select + " WHERE id = ANY (?) ORDER BY id")
                .param(ids(about, kind))
                .query(String.class)
                .list();
    }

    private static Long[] ids(List<TraceRef> about, TraceKind kind) {
        return about.stream()
                .filter(ref -> ref.kind() == kind)
                .map(TraceRef::id)
                .distinct()
                .toArray(Long[]::new);
    }
}
