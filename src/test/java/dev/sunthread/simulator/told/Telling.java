package dev.sunthread.simulator.told;

import dev.sunthread.simulator.Chance;
import dev.sunthread.simulator.Habits;
import dev.sunthread.simulator.told.Draft.Fate;
import dev.sunthread.simulator.world.Assembly;
import dev.sunthread.simulator.world.Happening;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Tells what happened as the plant's ledger has it, definitions first. */
public final class Telling {

    private static final long SECOND = 1_000_000;
    private static final Map<Character, String> ITEMS = Map.of('r', "RCV", 'w', "WALL", 'm', "MOD", 'p', "PANEL");

    private final Chance chance;
    private final Rates rates;
    private final Names names;
    private final List<Happening> happenings;
    private final Map<String, Long> offsets = new HashMap<>();
    private final List<Told> told = new ArrayList<>();
    private final List<Told> later = new ArrayList<>();

    private Telling(String plant, List<Happening> happenings, Habits habits, Rates rates, Chance chance) {
        this.chance = chance;
        this.rates = rates;
        this.happenings = happenings;
        Map<String, String> serials = new HashMap<>();
        Map<String, String> items = new HashMap<>();
        happenings.forEach(happening -> {
            if (happening instanceof Assembly.Birth birth) {
                serials.put(birth.unit(), birth.serial());
                items.put(
                        birth.unit(),
                        Objects.requireNonNull(ITEMS.get(birth.unit().charAt(0))));
            }
        });
        this.names = new Names(plant, serials, items);
        boolean skewed = chance.of(rates.of(Fault.SKEWED_CLOCK));
        new TreeMap<>(habits.clocks())
                .forEach((station, seconds) ->
                        offsets.put(station, skewed ? SECOND * chance.between(-seconds, seconds) : 0L));
        long released = happenings.get(0).at() - 86_400 * SECOND;
        told.addAll(Definitions.of(names, habits.clocks(), habits.carryOver(), released));
        drafts(items).forEach(this::tell);
        told.addAll(later);
    }

    public static List<Told> of(String plant, List<Happening> happenings, Habits habits, Rates rates, Chance chance) {
        return new Telling(plant, happenings, habits, rates, chance).told;
    }

    private List<Draft> drafts(Map<String, String> items) {
        Writer writer = new Writer(names, chance);
        List<Draft> drafts = new ArrayList<>();
        happenings.forEach(happening -> writer.write(happening).ifPresent(drafts::add));
        new Faults(drafts, rates, chance, new Truly(happenings, items)).befall();
        return drafts;
    }

    private void tell(Draft draft) {
        List<Told> where = draft.late ? later : told;
        long at = draft.happening.at();
        switch (draft.fate) {
            case RECORDED -> tell(draft, at, where);
            case UNREADABLE ->
                where.add(new Told(
                        draft.id, "kept-line", at, Lines.unreadable(told(draft, draft.id, at), Lines.form(draft))));
            case TAKEN_BACK -> takeBack(draft, at);
            default -> {}
        }
        if (draft.doubled) {
            where.add(told(draft, draft.id + "-again", at + moment(draft)));
        }
        if (draft.kind.equals("charge") && draft.fate == Fate.RECORDED && chance.of(rates.of(Fault.FALSE_CHARGE))) {
            Map<String, Object> body = new LinkedHashMap<>(draft.body);
            body.remove("container");
            body.put("lot", names.of("ADH-1"));
            where.add(new Told(
                    draft.id + "-false", "charge", told(draft, draft.id, at).at(), body));
        }
    }

    private void tell(Draft draft, long at, List<Told> where) {
        Told truth = told(draft, draft.id, at);
        Chance own = new Chance(draft.id.hashCode() + 3L);
        if (own.of(rates.of(Fault.MENDED_UNREADABLY)) && !draft.needed && !draft.keepsScans && namesALot(draft)) {
            where.add(new Told(truth.id(), truth.kind(), truth.at(), withAnotherLot(truth.body())));
            later.add(Lines.correction(truth, at + 60 * SECOND));
        } else {
            where.add(truth);
        }
        if (draft.kind.equals("charge") && own.of(rates.of(Fault.TAKEN_BACK_UNREADABLY))) {
            where.add(new Told(draft.id + "-never", "charge", truth.at() + SECOND, withAnotherLot(truth.body())));
            later.add(Lines.taking(draft.id + "-never", at + 60 * SECOND));
        }
    }

    private static boolean namesALot(Draft draft) {
        return draft.kind.equals("charge")
                || draft.kind.equals("step")
                        && Faults.list(draft.body, "uses").stream().anyMatch(use -> use.containsKey("lot"));
    }

    private Map<String, Object> withAnotherLot(Map<String, Object> truth) {
        Map<String, Object> body = new LinkedHashMap<>(truth);
        if (body.containsKey("lot")) {
            body.put("lot", names.of("ADH-1"));
            body.remove("container");
        } else if (body.containsKey("uses")) {
            body.put(
                    "uses",
                    Faults.list(truth, "uses").stream()
                            .map(this::withAnotherLot)
                            .toList());
        }
        return body;
    }

    private void takeBack(Draft draft, long at) {
        told.add(told(draft, draft.id, at));
        later.add(new Told(
                draft.id + "-void", "void", at + 60 * SECOND, Map.of("entry", draft.id, "why", "Taken for another")));
    }

    // a moment later, but not after what truly happened next
    private long moment(Draft draft) {
        int next = happenings.indexOf(draft.happening) + 1;
        boolean soon = next < happenings.size() && happenings.get(next).at() - draft.happening.at() < 3 * SECOND;
        return soon ? 0 : SECOND * chance.between(0, 2);
    }

    private Told told(Draft draft, String id, long at) {
        long offset = offset(draft.station);
        Map<String, Object> body = new LinkedHashMap<>(draft.body);
        if (body.get("startedAt") instanceof Long start) {
            body.put("startedAt", Told.written(start + offset));
        }
        return new Told(id, draft.kind, at + offset, body);
    }

    private long offset(@Nullable String station) {
        return Objects.requireNonNull(
                offsets.get(station == null ? chance.any(new TreeMap<>(offsets).keySet()) : station));
    }
}
