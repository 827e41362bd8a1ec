package dev.sunthread.simulator.told;

import dev.sunthread.simulator.Chance;
import dev.sunthread.simulator.told.Draft.Fate;
import dev.sunthread.simulator.world.Heat;
import dev.sunthread.simulator.world.Supply;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Lets faults befall the records of a plant, each as often as its rate says. */
final class Faults {

    private static final Map<String, Fault> LOSSES = Map.ofEntries(
            Map.entry("step", Fault.LOST_STEP),
            Map.entry("charge", Fault.LOST_CHARGE),
            Map.entry("discharge", Fault.LOST_DISCHARGE),
            Map.entry("clean-point", Fault.LOST_CLEAN_POINT),
            Map.entry("installation", Fault.LOST_INSTALLATION),
            Map.entry("removal", Fault.LOST_REMOVAL),
            Map.entry("carrier-load", Fault.LOST_TRAY_LOAD),
            Map.entry("carrier-unload", Fault.LOST_TRAY_UNLOAD),
            Map.entry("receipt", Fault.LOST_RECEIPT),
            Map.entry("birth", Fault.LOST_BIRTH),
            Map.entry("container", Fault.LOST_FILLING),
            Map.entry("split", Fault.LOST_MAKING),
            Map.entry("merge", Fault.LOST_MAKING),
            Map.entry("relabel", Fault.LOST_MAKING),
            Map.entry("blend", Fault.LOST_MAKING));

    /** What drew for being unreadable first; all else draws by itself, so that plants known by their seed stay. */
    private static final Set<String> NAMEABLE =
            Set.of("step", "charge", "discharge", "clean-point", "installation", "removal", "receipt", "birth");

    private static final Set<@Nullable Fault> COUNTED_APART_ONCE = new HashSet<>(EnumSet.of(
            Fault.LOST_MAKING, Fault.LOST_FILLING, Fault.LOST_CHARGE_LEFT_BEHIND, Fault.LOST_INSTALLATION_WORKED_ON));

    private final List<Draft> drafts;
    private final Rates rates;
    private final Chance chance;
    private final Evidence evidence;
    private final StoreEvidence store;
    private final Truly truly;

    Faults(List<Draft> drafts, Rates rates, Chance chance, Truly truly) {
        this.drafts = drafts;
        this.rates = rates;
        this.chance = chance;
        this.truly = truly;
        this.evidence = new Evidence(drafts, truly);
        this.store = new StoreEvidence(drafts);
    }

    void befall() {
        chance.some(drafts, drafts.size()).forEach(this::vanish);
        drafts.forEach(this::loseWhatALotIsOf);
        loseWithoutTrace();
        drafts.stream().filter(Draft::isRecorded).forEach(this::blur);
    }

    private void vanish(Draft draft) {
        if (draft.needed) {
            return;
        }
        Fault loss = loss(draft);
        if (loss != null && chance.of(rates.of(loss)) && evidence.demands(draft)) {
            draft.fate = Fate.LOST;
        } else if (loss != null
                && !loss.isCountedApart()
                && drawn(draft, loss).of(rates.of(Fault.VOIDED_SCAN))
                && evidence.demands(draft)
                && store.namesWhatCameOf(draft)) {
            draft.fate = Fate.TAKEN_BACK;
        } else if (!(loss != null && loss.isCountedApart())
                && (NAMEABLE.contains(draft.kind) ? drawn(draft, loss) : new Chance(draft.id.hashCode() + 2L))
                        .of(rates.of(Fault.UNREADABLE_LINE))
                && (Lines.form(draft) == Lines.Form.WHOLE || evidence.demands(draft))) {
            draft.fate = Fate.UNREADABLE;
        } else if (draft.kind.equals("cure-run") && chance.of(rates.of(Fault.LOST_RUN_MEMBER))) {
            forgetMember(draft, (Heat.End) draft.happening);
        }
    }

    // what was counted apart once draws by itself, so that plants known by their seed stay as they are
    private Chance drawn(Draft draft, @Nullable Fault loss) {
        return COUNTED_APART_ONCE.contains(loss) ? new Chance(draft.id.hashCode()) : chance;
    }

    // each draws by itself, so that plants known by their seed stay as they are
    private void loseWhatALotIsOf(Draft draft) {
        Fault loss = StoreEvidence.lossOfOrigin(draft);
        if (loss != null && draft.isRecorded() && !draft.needed) {
            Chance own = new Chance(draft.id.hashCode());
            boolean isLost = own.of(rates.of(loss));
            if ((isLost || own.of(rates.of(Fault.VOIDED_SCAN))) && store.namesWhatCameOut(draft.happening)) {
                draft.fate = isLost ? Fate.LOST : Fate.TAKEN_BACK;
            }
        }
    }

    private @Nullable Fault loss(Draft draft) {
        Fault loss = LOSSES.get(draft.kind);
        if (store.isOnTop(draft)) {
            return Fault.LOST_TOP_UP;
        }
        if (loss == Fault.LOST_CHARGE && evidence.leavesBehind(draft)) {
            return Fault.LOST_CHARGE_LEFT_BEHIND;
        }
        return loss == Fault.LOST_INSTALLATION && evidence.isWorkedThrough(draft)
                ? Fault.LOST_INSTALLATION_WORKED_ON
                : loss;
    }

    private void loseWithoutTrace() {
        drafts.forEach(this::loseOfPlace);
        for (int i = 0; i < drafts.size(); i++) {
            if (drafts.get(i).kind.equals("discharge") && chance.of(rates.of(Fault.UNDETECTABLE_CHARGE))) {
                Object station = drafts.get(i).body.get("station");
                Object position = drafts.get(i).body.get("position");
                drafts.subList(i, drafts.size()).stream()
                        .filter(draft -> draft.kind.equals("charge")
                                && Objects.equals(draft.body.get("station"), station)
                                && Objects.equals(draft.body.get("position"), position))
                        .findFirst()
                        .ifPresent(charge -> charge.fate = Fate.LOST);
                drafts.get(i).fate = Fate.LOST;
            }
        }
    }

    private void loseOfPlace(Draft draft) {
        Fault loss = draft.kind.equals("removal")
                ? Fault.UNDETECTABLE_REMOVAL
                : draft.kind.equals("installation") ? Fault.UNDETECTABLE_INSTALLATION : null;
        if (loss != null
                && draft.isRecorded()
                && new Chance(draft.id.hashCode()).of(rates.of(loss))
                && !evidence.demands(draft)) {
            draft.fate = Fate.LOST;
        }
    }

    private void forgetMember(Draft draft, Heat.End run) {
        List<Map<String, Object>> units = list(draft.body, "units");
        List<Map<String, Object>> carriers = list(draft.body, "carriers");
        // which units came on which carrier is not told apart here, so all of them must be demanded
        Set<String> members = new LinkedHashSet<>(truly.in(run.begin().run()));
        if (evidence.cureIsDemanded(run, members)) {
            if (!units.isEmpty()) {
                draft.body.put("units", units.subList(1, units.size()));
            } else if (!carriers.isEmpty()) {
                List<Map<String, Object>> left = new ArrayList<>(carriers);
                left.remove(chance.any(carriers));
                draft.body.put("carriers", left);
            }
        }
    }

    private void blur(Draft draft) {
        draft.late = chance.of(rates.of(Fault.LATE));
        draft.doubled = chance.of(rates.of(Fault.DOUBLED_SCAN));
        if (draft.happening instanceof Supply.Receipt && chance.of(rates.of(Fault.LOST_SUPPLIER_LOT))) {
            draft.body.put("supplierLots", List.of());
        }
        if (draft.happening instanceof Supply.Blend blend
                && !blend.topUp()
                && chance.of(rates.of(Fault.LOST_COMPONENT))) {
            draft.body.put("components", chance.some(list(draft.body, "components"), 1));
        }
        if (draft.body.containsKey("container")
                && chance.of(rates.of(Fault.LOST_CONTAINER_SCAN))
                && !draft.keepsScans) {
            draft.body.remove("container");
        }
        if (draft.body.containsKey("uses")) {
            blurUses(draft);
        }
    }

    private void blurUses(Draft draft) {
        list(draft.body, "uses").forEach(use -> blurUse(use, draft));
        if (!draft.needed && chance.of(rates.of(Fault.LOST_USE)) && evidence.demands(draft)) {
            draft.body.remove("uses");
        }
    }

    private void blurUse(Map<String, Object> use, Draft draft) {
        if (chance.of(rates.of(Fault.LOST_CONTAINER_SCAN)) && !draft.keepsScans) {
            use.remove("container");
        }
        if (chance.of(rates.of(Fault.LOST_LOT_SCAN)) && !draft.keepsScans) {
            use.remove("lot");
            use.remove("container");
        }
        if (!draft.needed && chance.of(rates.of(Fault.LOST_POSITION))) {
            use.remove("position");
        }
        if (use.containsKey("lot") && use.containsKey("position") && chance.of(rates.of(Fault.FALSE_SCAN))) {
            use.put("lot", chance.any(lots()));
            use.remove("container");
        }
    }

    /** Every lot that is received or made. */
    List<Object> lots() {
        return drafts.stream()
                .filter(draft -> draft.kind.equals("receipt"))
                .map(draft -> Objects.requireNonNull(draft.body.get("lot")))
                .toList();
    }

    @SuppressWarnings("unchecked")
    static List<Map<String, Object>> list(Map<String, Object> body, String field) {
        return (List<Map<String, Object>>) body.getOrDefault(field, List.of());
    }
}
