package dev.sunthread.simulator.told;

import dev.sunthread.simulator.world.Assembly;
import dev.sunthread.simulator.world.Happening;
import dev.sunthread.simulator.world.Heat;
import dev.sunthread.simulator.world.Layout;
import dev.sunthread.simulator.world.Layout.Operation;
import dev.sunthread.simulator.world.Loading;
import dev.sunthread.simulator.world.Supply;
import dev.sunthread.simulator.world.Work;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Finds what else is recorded that shows that a record is missing. A record that nothing else demands can be lost
 * without a trace, and no rule could know; what is found to demand a lost record is kept.
 */
final class Evidence {

    private final List<Draft> drafts;
    private final Truly truly;
    private final StoreEvidence store;

    Evidence(List<Draft> drafts, Truly truly) {
        this.drafts = drafts;
        this.truly = truly;
        this.store = new StoreEvidence(drafts);
    }

    /** Whether a charge left something behind that went along with other material later. */
    boolean leavesBehind(Draft draft) {
        Loading.Charge charge = (Loading.Charge) draft.happening;
        for (int i = drafts.indexOf(draft) + 1; i < drafts.size(); i++) {
            Happening later = drafts.get(i).happening;
            if (later instanceof Loading.Purge purge && purge.place().equals(charge.place())) {
                return false;
            }
            if (carries(later, charge)) {
                return true;
            }
        }
        return false;
    }

    private static boolean carries(Happening later, Loading.Charge charge) {
        return later instanceof Work.Step step
                        && step.uses().stream()
                                .anyMatch(use -> charge.place().equals(use.place())
                                        && use.carried().contains(charge.source()))
                || later instanceof Loading.Discharge off
                        && off.place().equals(charge.place())
                        && off.carried().contains(charge.source());
    }

    /** Whether something acted, through a child whose installation this is, on the parent and what is in it. */
    boolean isWorkedThrough(Draft draft) {
        Assembly.Installation installed = (Assembly.Installation) draft.happening;
        for (int i = drafts.indexOf(draft) + 1; i < drafts.size(); i++) {
            Happening later = drafts.get(i).happening;
            if (later instanceof Assembly.Removal off && isSamePlace(off, installed)) {
                return false;
            }
            if (truly.actsThrough(later, installed.child().name())) {
                return true;
            }
        }
        return false;
    }

    /** Whether something else recorded shows that this is missing; that is kept from now on. */
    boolean demands(Draft draft) {
        List<Draft> found = new ArrayList<>();
        boolean demanded = isDemanded(draft, found);
        if (demanded) {
            found.forEach(one -> one.needed = true);
        }
        return demanded;
    }

    private boolean isDemanded(Draft draft, List<Draft> by) {
        Happening happening = draft.happening;
        int index = drafts.indexOf(draft);
        if (happening instanceof Work.Step step) {
            return step.uses().isEmpty() || step.units().stream().allMatch(unit -> workIsDemanded(index, unit, by));
        }
        if (happening instanceof Supply.Filling filling) {
            return store.demands(filling);
        }
        if (happening instanceof Supply supply) {
            return store.keepsWhatCameOf(supply);
        }
        if (happening instanceof Loading.Charge charge) {
            return chargeIsDemanded(index, charge, by);
        }
        if (happening instanceof Loading.Discharge discharge) {
            return discharge.into() == null;
        }
        if (happening instanceof Assembly.Installation installed) {
            return childIsDemanded(index, installed, by);
        }
        if (happening instanceof Assembly.Removal removed) {
            return removed.child().unit() != null && contradicts(index, removed, by);
        }
        if (happening instanceof Heat.Load load) {
            return loadIsDemanded(index, load, by);
        }
        if (happening instanceof Heat.Unload || happening instanceof Heat.Emptying) {
            return carriedAway(index).stream().allMatch(carried -> isLoadedElsewhere(index, carried, by));
        }
        return true;
    }

    private boolean workIsDemanded(int index, String unit, List<Draft> by) {
        Work.Step step = (Work.Step) drafts.get(index).happening;
        boolean again = drafts.stream()
                .filter(other -> other != drafts.get(index) && other.isRecorded())
                .anyMatch(other -> other.happening instanceof Work.Step one
                        && one.operation().equals(step.operation())
                        && one.units().contains(unit));
        return !again && movesOn(index, unit, step.operation(), by);
    }

    /** Whether the unit is recorded as moving on: by a later operation, into a parent, or out of the plant. */
    private boolean movesOn(int index, String unit, String operation, List<Draft> by) {
        String item = itemOf(unit);
        int rank = Layout.rank(item, operation);
        return find(
                index,
                by,
                happening -> happening instanceof Work.Step step
                                && step.units().contains(unit)
                                && Layout.rank(item, step.operation()) > rank
                        || leaves(happening, unit));
    }

    private static boolean leaves(Happening happening, String unit) {
        return happening instanceof Assembly.Installation put
                        && unit.equals(put.child().unit())
                || happening instanceof Assembly.Shipment shipped
                        && shipped.unit().equals(unit);
    }

    private boolean chargeIsDemanded(int index, Loading.Charge charge, List<Draft> by) {
        Optional<Draft> before =
                last(index, one -> one instanceof Loading.Charge || one instanceof Loading.Discharge, charge);
        if (before.isPresent() && !(before.get().isRecorded() && before.get().happening instanceof Loading.Discharge)) {
            return false;
        }
        before.ifPresent(by::add);
        int end = endOf(index, charge);
        return findUntil(
                index,
                end,
                by,
                happening -> happening instanceof Loading.Discharge off
                                && off.place().equals(charge.place())
                        || happening instanceof Work.Step step
                                && step.uses().stream()
                                        .anyMatch(use -> charge.place().equals(use.place())));
    }

    private Optional<Draft> last(int index, Predicate<Loading> isSuch, Loading at) {
        for (int i = index - 1; i >= 0; i--) {
            if (drafts.get(i).happening instanceof Loading one && one.place().equals(at.place()) && isSuch.test(one)) {
                return Optional.of(drafts.get(i));
            }
        }
        return Optional.empty();
    }

    private int endOf(int index, Loading.Charge charge) {
        int end = index + 1;
        while (end < drafts.size()
                && !(drafts.get(end).happening instanceof Loading.Discharge off
                        && off.place().equals(charge.place()))) {
            end++;
        }
        return Math.min(end + 1, drafts.size());
    }

    private boolean childIsDemanded(int index, Assembly.Installation installed, List<Draft> by) {
        for (int i = 0; i < index; i++) {
            Draft draft = drafts.get(i);
            if (draft.happening instanceof Assembly.Removal off
                    && (off.child().equals(installed.child()) || isSamePlace(off, installed))) {
                if (!draft.isRecorded()) {
                    return false;
                }
                by.add(draft);
            }
        }
        int end = index + 1;
        while (end < drafts.size()
                && !(drafts.get(end).happening instanceof Assembly.Removal off && isSamePlace(off, installed))) {
            end++;
        }
        String parent = installed.parent();
        int fitted = Layout.rankTaking(itemOf(parent), installed.position());
        return findUntil(
                index,
                Math.min(end + 1, drafts.size()),
                by,
                happening -> happening instanceof Work.Step step
                                && step.units().contains(parent)
                                && Layout.rank(itemOf(parent), step.operation()) > fitted
                        || leaves(happening, parent)
                        || happening instanceof Assembly.Removal off && isSamePlace(off, installed));
    }

    private static boolean isSamePlace(Assembly.Removal removed, Assembly.Installation installed) {
        return removed.parent().equals(installed.parent()) && removed.position().equals(installed.position());
    }

    /** Whether the next installation of the child, or into its place, can't be if it still is where it was. */
    private boolean contradicts(int index, Assembly.Removal removed, List<Draft> by) {
        for (int i = index + 1; i < drafts.size(); i++) {
            if (drafts.get(i).happening instanceof Assembly.Installation next) {
                boolean sameChild = next.child().equals(removed.child());
                boolean samePlace = isSamePlace(removed, next);
                if (sameChild || samePlace) {
                    by.add(drafts.get(i));
                    return drafts.get(i).isRecorded() && !(sameChild && samePlace);
                }
            }
        }
        return false;
    }

    private boolean loadIsDemanded(int index, Heat.Load load, List<Draft> by) {
        int end = index + 1;
        while (end < drafts.size() && !takesOff(drafts.get(end).happening, load)) {
            end++;
        }
        if (end < drafts.size()
                && drafts.get(end).isRecorded()
                && drafts.get(end).happening instanceof Heat.Unload off
                && off.carried().equals(load.carried())) {
            by.add(drafts.get(end));
            return true;
        }
        int until = Math.min(end + 1, drafts.size());
        return load.unit()
                && truly.between(index, until, load.carried(), drafts).stream()
                        .allMatch(run -> cureIsDemanded(run, load.carried(), by));
    }

    private static boolean takesOff(Happening happening, Heat.Load load) {
        return happening instanceof Heat.Unload off && off.carried().equals(load.carried())
                || happening instanceof Heat.Emptying all && all.carrier().equals(load.carrier());
    }

    /** Whether the unit's route demands the run's recipe, which it went through once, and it moved on since. */
    boolean cureIsDemanded(Heat.End run, String unit, List<Draft> by) {
        return (truly.count(unit, run.recipe()) == 1 || isOnlyOneSinceStep(run, unit, by))
                && Layout.route(itemOf(unit)).stream()
                        .filter(operation -> run.recipe().equals(operation.cure()))
                        .map(Operation::code)
                        .anyMatch(operation -> movesOn(indexOf(run), unit, operation, by));
    }

    // a run before the step, or after the next operation, is not what the step demands
    private boolean isOnlyOneSinceStep(Heat.End run, String unit, List<Draft> by) {
        int rank = Layout.rankOfCure(itemOf(unit), run.recipe());
        Optional<Draft> step = drafts.stream()
                .filter(draft -> draft.isRecorded()
                        && draft.happening instanceof Work.Step done
                        && done.units().contains(unit)
                        && Layout.rank(itemOf(unit), done.operation()) == rank
                        && done.at() <= run.begin().at())
                .reduce((earlier, later) -> later);
        Optional<Draft> next = drafts.stream()
                .filter(draft -> draft.isRecorded()
                        && draft.happening instanceof Work.Step done
                        && done.units().contains(unit)
                        && Layout.rank(itemOf(unit), done.operation()) > rank
                        && done.start() >= run.at())
                .findFirst();
        if (rank < 0 || step.isEmpty() || next.isEmpty()) {
            return false;
        }
        long from = ((Work.Step) step.get().happening).start();
        long to = ((Work.Step) next.get().happening).start();
        boolean isOnly = truly.under(unit, run.recipe()).stream()
                .noneMatch(other -> other != run
                        && other.begin().at() >= from
                        && other.begin().at() <= to);
        if (isOnly) {
            by.add(step.get());
            by.add(next.get());
        }
        return isOnly;
    }

    boolean cureIsDemanded(Heat.End run, Iterable<String> members) {
        List<Draft> found = new ArrayList<>();
        for (String member : members) {
            if (!cureIsDemanded(run, member, found)) {
                return false;
            }
        }
        found.forEach(one -> one.needed = true);
        return true;
    }

    private List<String> carriedAway(int index) {
        Happening happening = drafts.get(index).happening;
        return happening instanceof Heat.Unload off ? List.of(off.carried()) : truly.emptied((Heat.Emptying) happening);
    }

    // a carrier that takes the same on again, or is emptied, would seem to have held it until then
    private boolean isLoadedElsewhere(int index, String carried, List<Draft> by) {
        String carrier = truly.carrier(drafts.get(index).happening);
        boolean seemsToStay = drafts.subList(index + 1, drafts.size()).stream()
                .map(draft -> draft.happening)
                .anyMatch(later -> later instanceof Heat.Load load
                                && load.carried().equals(carried)
                                && load.carrier().equals(carrier)
                        || later instanceof Heat.Emptying all && all.carrier().equals(carrier));
        return !seemsToStay;
    }

    private String itemOf(String unit) {
        return truly.itemOf(unit);
    }

    private int indexOf(Happening happening) {
        for (int i = 0; i < drafts.size(); i++) {
            if (drafts.get(i).happening == happening) {
                return i;
            }
        }
        throw new IllegalArgumentException(happening.toString());
    }

    private boolean find(int index, List<Draft> by, Predicate<Happening> shows) {
        return findUntil(index, drafts.size(), by, shows);
    }

    private boolean findUntil(int index, int end, List<Draft> by, Predicate<Happening> shows) {
        for (int i = index + 1; i < end; i++) {
            if (drafts.get(i).isRecorded() && shows.test(drafts.get(i).happening)) {
                by.add(drafts.get(i));
                return true;
            }
        }
        return false;
    }
}
