package dev.sunthread.genealogy.scope;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.Scope;
import dev.sunthread.genealogy.Windows;
import dev.sunthread.genealogy.history.Clocks;
import dev.sunthread.genealogy.history.HistoryRecords;
import dev.sunthread.genealogy.history.KnownNames;
import dev.sunthread.genealogy.history.PlacementHistory;
import dev.sunthread.genealogy.history.SignHistory;
import dev.sunthread.genealogy.history.Sql;
import dev.sunthread.genealogy.reach.Containment;
import dev.sunthread.genealogy.reach.Reach;
import dev.sunthread.genealogy.records.Happening;
import dev.sunthread.genealogy.records.LineRecords;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.genealogy.walk.Starts;
import dev.sunthread.genealogy.walk.Suspect;
import dev.sunthread.kernel.Refused;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Known;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToLongFunction;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Finds what the single parts of a scope name in history. Windows are widened by what clocks may be off. */
public final class ScopeHistory {

    private static final String STEPS = "SELECT s.entry FROM production.step s"
            + " JOIN catalog.station st ON st.id = s.station JOIN ledger.entry l ON l.number = s.entry"
            + " WHERE s.started_at <= :to AND s.ended_at >= :from AND " + Known.at("s.entry") + " AND ";

    private static final String AT_POSITION = STEPS + """
            EXISTS (SELECT FROM production.step_use u LEFT JOIN catalog.position p ON p.id = u.position
              WHERE u.entry = s.entry AND st.code = :station AND (u.position IS NULL OR p.code = :position))
            """;

    private static final String WITH_VALUE = STEPS + """
            EXISTS (SELECT FROM production.step_value v WHERE v.entry = s.entry AND v.name = :value
              AND v.value BETWEEN coalesce(:least::numeric, v.value) AND coalesce(:most::numeric, v.value))
            """;

    private static final String RECEIVED = """
            SELECT r.lot FROM materials.receipt r JOIN catalog.item i ON i.id = r.item
            WHERE i.number = :item AND r.received_at BETWEEN :from AND :to
              AND (:supplier::text IS NULL OR r.supplier IS NULL OR r.supplier = :supplier) AND %s
            """.formatted(Known.at("r.entry"));

    private static final String OF_SUPPLIER_LOT = """
            SELECT r.lot, bool_or(s.supplier_lot = :supplierLot) FROM materials.receipt r
            LEFT JOIN materials.receipt_supplier_lot s ON s.entry = r.entry
            WHERE %1$s AND (s.supplier_lot = :supplierLot OR s.entry IS NULL AND r.item IN (
              SELECT q.item FROM materials.receipt q JOIN materials.receipt_supplier_lot t USING (entry)
              WHERE t.supplier_lot = :supplierLot AND %2$s))
            GROUP BY r.lot
            """.formatted(Known.at("r.entry"), Known.at("q.entry"));

    private static final String ITEMS_OF_SUPPLIER_LOT = """
            SELECT r.item FROM materials.receipt r JOIN materials.receipt_supplier_lot s USING (entry)
            WHERE s.supplier_lot = :named AND %s
            """.formatted(Known.at("r.entry"));

    private static final String CURES = """
            SELECT r.run, min(%s) FROM cure.run_record r JOIN catalog.equipment e ON e.id = r.equipment
            WHERE e.code = :equipment AND r.started_at <= :to AND r.ended_at >= :from AND %s GROUP BY r.run
            """.formatted(Sql.micros("r.started_at"), Known.at("r.entry"));

    private static final String TESTS = """
            SELECT r.run, min(%s) FROM electrical.run_record r JOIN catalog.equipment e ON e.id = r.equipment
            WHERE e.code = :equipment AND r.started_at <= :to AND r.ended_at >= :from AND %s GROUP BY r.run
            """.formatted(Sql.micros("r.started_at"), Known.at("r.entry"));

    private final JdbcClient jdbc;
    private final long cutoff;
    private final Clocks clocks;
    private final KnownNames names;
    private final JudgedRuns judged;
    private final LineRecords lines;
    private final Containment containment;
    private final Unreceived unreceived;

    ScopeHistory(JdbcClient jdbc, long cutoff, JudgedRuns judged) {
        this.jdbc = jdbc;
        this.cutoff = cutoff;
        this.clocks = new Clocks(jdbc, cutoff);
        this.names = new KnownNames(jdbc, cutoff);
        this.judged = judged;
        this.lines = HistoryRecords.lines(jdbc, cutoff, clocks);
        this.containment = new Containment(
                new PlacementHistory(jdbc, cutoff, clocks), new SignHistory(jdbc, cutoff, clocks, lines), lines);
        this.unreceived = new Unreceived(jdbc, cutoff);
    }

    /** The suspects that one part names by itself. @throws Refused if it names what nobody recorded */
    public List<Suspect> named(Scope scope, Starts starts) {
        if (scope instanceof Scope.Lot lot) {
            return List.of(Suspect.sinceEver(node(TraceKind.LOT, lot.lot(), names::lot)));
        }
        if (scope instanceof Scope.SupplierLot supplierLot) {
            return ofSupplierLot(supplierLot.supplierLot());
        }
        if (scope instanceof Scope.Units named) {
            return named.units().stream()
                    .map(unit -> unit(unit, named.since(), starts))
                    .toList();
        }
        if (scope instanceof Scope.Container container) {
            return List.of(Suspect.sinceEver(node(TraceKind.CONTAINER, container.container(), names::container)));
        }
        if (scope instanceof Scope.TestVerdict verdict) {
            return judged.units(verdict, cutoff).stream()
                    .map(TraceRef::unit)
                    .map(unit -> new Suspect(unit, starts.of(unit), Certainty.CERTAIN))
                    .toList();
        }
        if (scope instanceof Scope.Received received) {
            return received(received);
        }
        return scope instanceof Scope.Carrier carrier ? onCarrier(carrier) : happenings(scope);
    }

    private List<Suspect> happenings(Scope scope) {
        if (scope instanceof Scope.CureRun run) {
            return List.of(Suspect.sinceEver(node(TraceKind.CURE_RUN, run.run(), names::cureRun)));
        }
        if (scope instanceof Scope.TestRun run) {
            return List.of(Suspect.sinceEver(node(TraceKind.TEST_RUN, run.run(), names::testRun)));
        }
        if (scope instanceof Scope.CureVerdict verdict) {
            return judged.cureRuns(verdict, cutoff).stream()
                    .map(run -> Suspect.sinceEver(new TraceRef(TraceKind.CURE_RUN, run)))
                    .distinct()
                    .toList();
        }
        if (scope instanceof Scope.Equipment equipment) {
            names.equipment(equipment.equipment());
            return onEquipment(equipment.equipment(), equipment.window());
        }
        if (scope instanceof Scope.Rig rig) {
            Scope.Window proposed = new Windows(jdbc, cutoff, judged.tests())
                    .ofEquipment(rig.rig(), rig.fault(), rig.window().to())
                    .window();
            Scope.Window window = rig.window().from() == null ? proposed : rig.window();
            return onEquipment(rig.rig(), window);
        }
        return steps(scope);
    }

    private List<Suspect> steps(Scope scope) {
        if (scope instanceof Scope.Position at) {
            names.station(at.station());
            return steps(AT_POSITION, at.window(), Map.of("station", at.station(), "position", at.position()));
        }
        if (scope instanceof Scope.Station at) {
            names.station(at.station());
            return steps(STEPS + "st.code = :station", at.window(), Map.of("station", at.station()));
        }
        if (scope instanceof Scope.Operator by) {
            return steps(STEPS + "l.actor = :operator", by.window(), Map.of("operator", by.operator()));
        }
        if (scope instanceof Scope.Operation of) {
            return steps(STEPS + "s.operation = :operation", of.window(), Map.of("operation", of.operation()));
        }
        Scope.Value value = (Scope.Value) scope;
        Map<String, Object> params = new HashMap<>();
        params.put("value", value.value());
        params.put("least", value.least());
        params.put("most", value.most());
        return steps(WITH_VALUE, value.window(), params);
    }

    private Suspect unit(Scope.UnitName name, @Nullable OffsetDateTime since, Starts starts) {
        TraceRef unit = TraceRef.unit(names.unit(name.id()));
        long start = since == null
                ? starts.of(unit)
                : clocks.told(null, micros(since)).early();
        return new Suspect(unit, start, Certainty.CERTAIN);
    }

    private List<Suspect> ofSupplierLot(String supplierLot) {
        List<Suspect> found = jdbc.sql(OF_SUPPLIER_LOT)
                .param("supplierLot", supplierLot)
                .param("cutoff", cutoff)
                .query((row, number) -> new Suspect(
                        TraceRef.lot(row.getLong(1)),
                        Long.MIN_VALUE,
                        row.getBoolean(2) ? Certainty.CERTAIN : Certainty.UNPROVEN))
                .list();
        if (found.isEmpty()) {
            throw unknown("Supplier lot " + supplierLot);
        }
        return withUnreceived(found, ITEMS_OF_SUPPLIER_LOT, supplierLot, Long.MIN_VALUE);
    }

    private List<Suspect> received(Scope.Received received) {
        names.item(received.item());
        Map<String, Object> params = new HashMap<>(window(received.window()));
        params.put("item", received.item());
        params.put("supplier", received.supplier());
        List<Suspect> found = jdbc.sql(RECEIVED)
                .params(params)
                .param("cutoff", cutoff)
                .query((row, number) -> Suspect.sinceEver(TraceRef.lot(row.getLong(1))))
                .list();
        long since = told(received.window().from(), Moment.SINCE_EVER).early();
        return withUnreceived(found, "SELECT id FROM catalog.item WHERE number = :named", received.item(), since);
    }

    private List<Suspect> withUnreceived(List<Suspect> found, String items, String named, long since) {
        Set<Long> ofItems = new HashSet<>(jdbc.sql(items)
                .param("named", named)
                .param("cutoff", cutoff)
                .query((row, number) -> row.getLong(1))
                .list());
        return Stream.concat(found.stream(), unreceived.of(ofItems, since).stream())
                .toList();
    }

    private List<Suspect> onCarrier(Scope.Carrier carrier) {
        TraceRef node = node(TraceKind.CARRIER, carrier.carrier(), names::carrier);
        Moment from = told(carrier.window().from(), Moment.SINCE_EVER);
        Moment to = told(carrier.window().to(), Moment.NEVER);
        Happening window =
                new Happening(node, 0, from, to.orLater(from), java.util.Set.of(), java.util.Set.of(node), null, null);
        return new Reach(containment, any -> java.util.Map.of())
                .of(window).entrySet().stream()
                        .map(on -> new Suspect(on.getKey(), from.early(), on.getValue()))
                        .toList();
    }

    private List<Suspect> onEquipment(String equipment, Scope.Window window) {
        return Stream.of(TraceKind.CURE_RUN, TraceKind.TEST_RUN)
                .flatMap(kind -> jdbc
                        .sql(kind == TraceKind.CURE_RUN ? CURES : TESTS)
                        .params(window(window))
                        .param("equipment", equipment)
                        .param("cutoff", cutoff)
                        .query((row, number) -> Suspect.sinceEver(new TraceRef(kind, row.getLong(1))))
                        .list()
                        .stream())
                .toList();
    }

    private List<Suspect> steps(String sql, Scope.Window window, Map<String, ?> params) {
        return jdbc.sql(sql)
                .params(window(window))
                .params(params)
                .param("cutoff", cutoff)
                .query((row, number) -> Suspect.sinceEver(TraceRef.step(row.getLong(1))))
                .list();
    }

    private Map<String, Object> window(Scope.Window window) {
        return Map.of(
                "from", at(told(window.from(), Moment.SINCE_EVER).early()),
                "to", at(told(window.to(), Moment.NEVER).late()));
    }

    private Moment told(@Nullable OffsetDateTime at, Moment open) {
        return at == null ? open : clocks.told(null, micros(at));
    }

    private static OffsetDateTime at(long instant) {
        long within = Math.max(-62_000_000_000_000_000L, Math.min(instant, 200_000_000_000_000_000L));
        return Instant.EPOCH.plus(within, ChronoUnit.MICROS).atOffset(ZoneOffset.UTC);
    }

    private static long micros(OffsetDateTime at) {
        return ChronoUnit.MICROS.between(Instant.EPOCH, at.toInstant());
    }

    /** What is recorded under a name, or what nothing but a kept line names. */
    private TraceRef node(TraceKind kind, String name, ToLongFunction<String> number) {
        return lines.strangers().entrySet().stream()
                .filter(one -> one.getKey().kind() == kind && one.getValue().equals(name))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElseGet(() -> new TraceRef(kind, number.applyAsLong(name)));
    }

    private static Refused unknown(String what) {
        return new Refused(what + " is not recorded", "Look for near matches with the search box");
    }
}
