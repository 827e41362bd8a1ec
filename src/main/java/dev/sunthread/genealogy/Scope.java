package dev.sunthread.genealogy;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import dev.sunthread.catalog.FoundError;
import dev.sunthread.kernel.UnitId;
import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * What is suspect, in the words of labels and of the floor; every part of it can be joined with others. It stands for
 * nodes of the genealogy, each with the time since when it is suspect, and its answer is the union of theirs.
 */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "of")
@JsonSubTypes({
    @JsonSubTypes.Type(value = Scope.Any.class, name = "any"),
    @JsonSubTypes.Type(value = Scope.All.class, name = "all"),
    @JsonSubTypes.Type(value = Scope.Except.class, name = "except"),
    @JsonSubTypes.Type(value = Scope.Lot.class, name = "lot"),
    @JsonSubTypes.Type(value = Scope.SupplierLot.class, name = "supplier-lot"),
    @JsonSubTypes.Type(value = Scope.Received.class, name = "received"),
    @JsonSubTypes.Type(value = Scope.Container.class, name = "container"),
    @JsonSubTypes.Type(value = Scope.Position.class, name = "position"),
    @JsonSubTypes.Type(value = Scope.CureRun.class, name = "cure-run"),
    @JsonSubTypes.Type(value = Scope.TestRun.class, name = "test-run"),
    @JsonSubTypes.Type(value = Scope.CureVerdict.class, name = "cure-verdict"),
    @JsonSubTypes.Type(value = Scope.TestVerdict.class, name = "test-verdict"),
    @JsonSubTypes.Type(value = Scope.Equipment.class, name = "equipment"),
    @JsonSubTypes.Type(value = Scope.Rig.class, name = "rig"),
    @JsonSubTypes.Type(value = Scope.Station.class, name = "station"),
    @JsonSubTypes.Type(value = Scope.Operator.class, name = "operator"),
    @JsonSubTypes.Type(value = Scope.Operation.class, name = "operation"),
    @JsonSubTypes.Type(value = Scope.Value.class, name = "value"),
    @JsonSubTypes.Type(value = Scope.Carrier.class, name = "carrier"),
    @JsonSubTypes.Type(value = Scope.Units.class, name = "units"),
    @JsonSubTypes.Type(value = Scope.Parents.class, name = "parents"),
    @JsonSubTypes.Type(value = Scope.Children.class, name = "children")
})
public sealed interface Scope {

    /** Everything that one of these is: suspect since the earliest of them says so. */
    record Any(List<Scope> scopes) implements Scope {

        public Any {
            given(scopes, "scopes");
        }
    }

    /** Only what all of these are: suspect since the last of them says so. */
    record All(List<Scope> scopes) implements Scope {

        public All {
            given(scopes, "scopes");
        }
    }

    /** What the one is and the other is not. It takes suspects away before the walk, never units after it. */
    record Except(Scope scope, Scope without) implements Scope {

        public Except {
            given(scope, "scope");
            given(without, "without");
        }
    }

    /** A lot, by the plant's number. */
    record Lot(String lot) implements Scope {

        public Lot {
            given(lot, "lot");
        }
    }

    /** Every lot that a receipt says consists of this supplier's lot, and those whose receipts name none. */
    record SupplierLot(String supplierLot) implements Scope {

        public SupplierLot {
            given(supplierLot, "supplierLot");
        }
    }

    /** Lots of an item received in a window, from one supplier if one is named. */
    record Received(String item, @Nullable String supplier, Window window) implements Scope {

        public Received {
            given(item, "item");
            window = opened(window);
        }
    }

    /** A container, by its label. */
    record Container(String container) implements Scope {

        public Container {
            given(container, "container");
        }
    }

    /** Steps that may have drawn from a position in a window. */
    record Position(String station, String position, Window window) implements Scope {

        public Position {
            given(station, "station");
            given(position, "position");
            window = opened(window);
        }
    }

    record CureRun(String run) implements Scope {

        public CureRun {
            given(run, "run");
        }
    }

    record TestRun(String run) implements Scope {

        public TestRun {
            given(run, "run");
        }
    }

    /** Cure runs under a recipe whose raw data have one of the outcomes: by default those that broke it. */
    record CureVerdict(String recipe, @JsonUnwrapped Judged by) implements Scope {

        public CureVerdict {
            given(recipe, "recipe");
            by = by == null ? Judged.BROKEN : by;
        }
    }

    /** Units whose last valid test under a specification has one of the outcomes by its raw data: by default failed. */
    record TestVerdict(String specification, @JsonUnwrapped Judged by) implements Scope {

        public TestVerdict {
            given(specification, "specification");
            by = by == null ? Judged.BROKEN : by;
        }
    }

    /**
     * How raw data are judged.
     *
     * @param revision the revision that judges; absent for the one in force when each run began
     * @param outcomes failed, not-proven or passed
     * @param equipment with what the runs were done; absent for any
     * @param errors errors of the equipment to judge by; none if those that checks found count
     */
    record Judged(
            @Nullable String revision,
            List<String> outcomes,
            @Nullable String equipment,
            Window window,
            List<Wrong> errors) {

        public static final Judged BROKEN = new Judged(null, List.of(), null, Window.OPEN, List.of());

        public Judged {
            outcomes = outcomes == null || outcomes.isEmpty() ? List.of("failed") : List.copyOf(outcomes);
            window = opened(window);
            errors = errors == null ? List.of() : List.copyOf(errors);
        }
    }

    /** By how much equipment read above the truth: in the sensor's unit, or in percent for current and voltage. */
    record Wrong(
            @Nullable String sensor,
            String quantity,
            @Nullable BigDecimal offset,
            @Nullable BigDecimal percent,
            @Nullable Boolean always) {

        public FoundError found() {
            return new FoundError(
                    sensor,
                    FoundError.Quantity.valueOf(quantity.toUpperCase(Locale.ROOT)),
                    offset,
                    percent,
                    Boolean.TRUE.equals(always) ? FoundError.Onset.ALWAYS : FoundError.Onset.UNKNOWN);
        }
    }

    /** Cure runs and test runs on a piece of equipment in a window. */
    record Equipment(String equipment, Window window) implements Scope {

        public Equipment {
            given(equipment, "equipment");
            window = opened(window);
        }
    }

    /** Test runs on a rig since the last verification that was good and able to see the fault. */
    record Rig(String rig, @Nullable String fault, Window window) implements Scope {

        public Rig {
            given(rig, "rig");
            window = opened(window);
        }
    }

    /** Steps at a station in a window. */
    record Station(String station, Window window) implements Scope {

        public Station {
            given(station, "station");
            window = opened(window);
        }
    }

    /** Steps that a person recorded, in a window. */
    record Operator(String operator, Window window) implements Scope {

        public Operator {
            given(operator, "operator");
            window = opened(window);
        }
    }

    /** Steps of an operation in a window. */
    record Operation(String operation, Window window) implements Scope {

        public Operation {
            given(operation, "operation");
            window = opened(window);
        }
    }

    /** Steps with a process value from {@code least} to {@code most}, both included, in a window. */
    record Value(
            String value,
            @Nullable BigDecimal least,
            @Nullable BigDecimal most,
            Window window) implements Scope {

        public Value {
            given(value, "value");
            window = opened(window);
        }
    }

    /** What was on a carrier at some time of a window. */
    record Carrier(String carrier, Window window) implements Scope {

        public Carrier {
            given(carrier, "carrier");
            window = opened(window);
        }
    }

    /** Units, suspect since their births or since a stated time. */
    record Units(List<UnitName> units, @Nullable OffsetDateTime since) implements Scope {

        public Units {
            given(units, "units");
        }
    }

    /** Whatever the units of a scope were ever in. */
    record Parents(Scope scope) implements Scope {

        public Parents {
            given(scope, "scope");
        }
    }

    /** Whatever was ever in the units of a scope. */
    record Children(Scope scope) implements Scope {

        public Children {
            given(scope, "scope");
        }
    }

    /** A unit as people name it. */
    record UnitName(String item, String serial, @Nullable String issuer) {

        public UnitId id() {
            return UnitId.of(issuer, item, serial);
        }
    }

    /** From one time to another, both included; open where a side is absent. */
    record Window(@Nullable OffsetDateTime from, @Nullable OffsetDateTime to) {

        public static final Window OPEN = new Window(null, null);
    }

    private static void given(@Nullable Object part, String name) {
        if (part == null) {
            throw new IllegalArgumentException("\"" + name + "\" is missing");
        }
    }

    private static Window opened(@Nullable Window window) {
        return window == null ? Window.OPEN : window;
    }
}
