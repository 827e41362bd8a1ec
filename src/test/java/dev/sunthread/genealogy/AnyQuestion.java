package dev.sunthread.genealogy;

import dev.sunthread.genealogy.Scope.Judged;
import dev.sunthread.genealogy.Scope.Window;
import dev.sunthread.kernel.UnitId;
import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Draws questions about things that are named: every root and every kind of scope, both ways, wider or not. */
final class AnyQuestion {

    /** How one kind of scope is drawn; those of scopes draw theirs of a few simple ones. */
    static final List<Function<AnyQuestion, Scope>> SCOPES = List.of(
            any -> new Scope.Any(List.of(any.lot(), any.units())),
            any -> new Scope.All(List.of(any.operation(), new Scope.Station(any.name("station"), Window.OPEN))),
            any -> new Scope.Except(new Scope.Any(List.of(any.lot(), any.lot())), any.lot()),
            AnyQuestion::lot,
            any -> new Scope.SupplierLot(any.name("supplierLots")),
            any -> new Scope.Received(any.name("item"), null, any.window()),
            any -> new Scope.Container(any.name("container")),
            AnyQuestion::position,
            any -> new Scope.CureRun(any.name("run")),
            any -> new Scope.TestRun(any.name("run")),
            any -> new Scope.CureVerdict(any.name("recipe"), any.judged()),
            any -> new Scope.TestVerdict(any.name("specification"), any.judged()),
            any -> new Scope.Equipment(any.name("equipment"), any.window()),
            any -> new Scope.Rig(any.name("equipment"), any.fault(), any.window()),
            any -> new Scope.Station(any.name("station"), any.window()),
            any -> new Scope.Operator("op-1", any.window()),
            AnyQuestion::operation,
            any -> new Scope.Value("glue mass", BigDecimal.ONE, null, any.window()),
            any -> new Scope.Carrier(any.name("carrier"), any.window()),
            AnyQuestion::units,
            any -> new Scope.Parents(any.units()),
            any -> new Scope.Children(any.units()));

    private final NamedInBodies named;
    private final Random random;

    AnyQuestion(NamedInBodies named, Random random) {
        this.named = named;
        this.random = random;
    }

    /** A question that has no cut-off. */
    TraceQuestion next() {
        Root root = root();
        return new TraceQuestion(TracedPlant.way(root), root, null, chance(3) ? moment() : null, chance(4));
    }

    private Root root() {
        return switch (random.nextInt(5)) {
            case 0 -> new Root.OfLot(name("lot"));
            case 1 -> new Root.OfSupplierLot(name("supplierLots"));
            case 2 -> new Root.OfUnit(unit().id());
            default ->
                new Root.OfScope(SCOPES.get(random.nextInt(SCOPES.size())).apply(this));
        };
    }

    String equipment() {
        return name("equipment");
    }

    Scope.Position position() {
        return new Scope.Position(name("station"), name("position"), window());
    }

    @Nullable
    String fault() {
        return chance(2) ? name("fault") : null;
    }

    OffsetDateTime moment() {
        return named.moments().get(random.nextInt(named.moments().size()));
    }

    String name(String field) {
        List<String> names = named.of(field);
        return names.get(random.nextInt(names.size()));
    }

    private Scope lot() {
        return new Scope.Lot(name("lot"));
    }

    private Scope operation() {
        return new Scope.Operation(name("operation"), window());
    }

    private Scope units() {
        return new Scope.Units(List.of(unit()), chance(3) ? moment() : null);
    }

    private Scope.UnitName unit() {
        Map<String, String> unit =
                named.units().get(random.nextInt(named.units().size()));
        UnitId id = UnitId.of(
                unit.get("issuer"),
                Objects.requireNonNull(unit.get("item")),
                Objects.requireNonNull(unit.get("serial")));
        return new Scope.UnitName(id.item(), id.serial(), unit.get("issuer"));
    }

    private Judged judged() {
        return new Judged(null, List.of("failed", "not-proven"), chance(2) ? equipment() : null, window(), List.of());
    }

    private Window window() {
        return new Window(chance(2) ? moment() : null, chance(2) ? moment() : null);
    }

    private boolean chance(int oneIn) {
        return random.nextInt(oneIn) == 0;
    }
}
