package dev.sunthread.simulator.told;

import dev.sunthread.simulator.world.Assembly;
import dev.sunthread.simulator.world.Happening;
import dev.sunthread.simulator.world.Loading;
import dev.sunthread.simulator.world.Source;
import dev.sunthread.simulator.world.Supply;
import dev.sunthread.simulator.world.Work;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Finds what else is recorded that shows that a record of what was done in the store is missing. */
final class StoreEvidence {

    private final List<Draft> drafts;

    StoreEvidence(List<Draft> drafts) {
        this.drafts = drafts;
    }

    /** Whether it put something on top of a lot, or into a container that was filled before. */
    boolean isOnTop(Draft draft) {
        if (draft.happening instanceof Supply.Filling filling) {
            return drafts.subList(0, drafts.indexOf(draft)).stream()
                    .anyMatch(before -> before.happening instanceof Supply.Filling one
                            && one.labels().stream().anyMatch(filling.labels()::contains));
        }
        return draft.happening instanceof Supply.Blend blend && blend.topUp();
    }

    /** Whether a record names each of the containers with its lot; its scan of the container stays. */
    boolean demands(Supply.Filling filling) {
        return filling.labels().stream().allMatch(label -> isDemanded(new Source(filling.lot(), label)));
    }

    private boolean isDemanded(Source filled) {
        Optional<Draft> shows = drafts.stream()
                .filter(Draft::isRecorded)
                .filter(draft -> names(draft.happening, filled)
                        && (!(draft.happening instanceof Work.Step) || isFilledOnce(filled)))
                .findFirst();
        shows.ifPresent(draft -> {
            draft.needed = true;
            draft.keepsScans = true;
        });
        return shows.isPresent();
    }

    private boolean isFilledOnce(Source filled) {
        return drafts.stream()
                        .filter(draft -> draft.happening instanceof Supply.Filling filling
                                && filling.labels().contains(filled.container()))
                        .count()
                == 1;
    }

    private static boolean names(Happening happening, Source filled) {
        return happening instanceof Loading.Charge charge && charge.source().equals(filled)
                || happening instanceof Work.Step step
                        && step.uses().stream().anyMatch(use -> use.source().equals(filled))
                || happening instanceof Supply.Split split && split.from().equals(filled)
                || happening instanceof Supply.Blend blend && blend.components().contains(filled);
    }

    /** Whether other records name every lot that came about by this, so that there is a sign of it if this is void. */
    boolean namesWhatCameOf(Draft draft) {
        List<Draft> found = new ArrayList<>();
        boolean named = made(draft.happening).stream().allMatch(lot -> find(lot, found));
        if (named) {
            found.forEach(one -> one.needed = true);
        }
        return named;
    }

    /** Whether what came about is named by a record that stays, or by none that was taken back. */
    boolean keepsWhatCameOf(Supply supply) {
        return made(supply).stream().allMatch(this::isKept);
    }

    /** The fault if this is lost and with it all that tells where a lot came from that was not one before. */
    static @Nullable Fault lossOfOrigin(Draft draft) {
        if (draft.happening instanceof Supply.Recovery) {
            return Fault.LOST_RECOVERY;
        }
        if (draft.happening instanceof Supply.Relabel relabel && relabel.item() != null) {
            return Fault.LOST_REGRADE;
        }
        return draft.happening instanceof Loading.Discharge off && off.into() != null ? Fault.LOST_UNLOADING : null;
    }

    /** Whether a record that stays names the lot that came out: if none does, nothing tells that it was there. */
    boolean namesWhatCameOut(Happening happening) {
        String lot = happening instanceof Supply.Recovery recovery
                ? recovery.lot()
                : happening instanceof Supply.Relabel relabel ? relabel.into() : ((Loading.Discharge) happening).into();
        return drafts.stream()
                .filter(draft -> draft.isRecorded() && shows(draft.happening, String.valueOf(lot)))
                .findFirst()
                .map(StoreEvidence::keep)
                .isPresent();
    }

    private static boolean shows(Happening happening, String lot) {
        return namesLot(happening, lot) || isDrawn(happening, lot);
    }

    private static Draft keep(Draft draft) {
        draft.needed = true;
        draft.keepsScans = true;
        return draft;
    }

    private boolean isKept(String lot) {
        List<Draft> naming =
                drafts.stream().filter(draft -> shows(draft.happening, lot)).toList();
        Optional<Draft> kept = naming.stream().filter(Draft::isRecorded).findFirst();
        kept.ifPresent(StoreEvidence::keep);
        return kept.isPresent() || naming.stream().noneMatch(draft -> draft.fate == Draft.Fate.TAKEN_BACK);
    }

    private static boolean isDrawn(Happening happening, String lot) {
        return happening instanceof Work.Step step
                && step.uses().stream().anyMatch(use -> use.source().lot().equals(lot));
    }

    private boolean find(String lot, List<Draft> found) {
        Optional<Draft> names = drafts.stream()
                .filter(draft -> draft.isRecorded() && namesLot(draft.happening, lot))
                .findFirst();
        names.ifPresent(found::add);
        return names.isPresent();
    }

    private static List<String> made(Happening happening) {
        if (happening instanceof Supply.Split split) {
            return split.into();
        }
        if (happening instanceof Supply.Merge merge) {
            return List.of(merge.into());
        }
        if (happening instanceof Supply.Relabel relabel) {
            return List.of(relabel.into());
        }
        return happening instanceof Supply.Blend blend ? List.of(blend.lot()) : List.of();
    }

    private static boolean namesLot(Happening happening, String lot) {
        return happening instanceof Loading.Charge charge
                        && charge.source().lot().equals(lot)
                || happening instanceof Assembly.Installation put
                        && lot.equals(put.child().lot())
                || happening instanceof Supply.Ending end && end.lot().equals(lot)
                || happening instanceof Supply.Filling filling && filling.lot().equals(lot)
                || happening instanceof Supply.Split split && split.from().lot().equals(lot)
                || happening instanceof Supply.Merge merge && merge.lots().contains(lot)
                || happening instanceof Supply.Relabel relabel && relabel.lot().equals(lot)
                || happening instanceof Supply.Blend blend
                        && blend.components().stream()
                                .anyMatch(part -> part.lot().equals(lot));
    }
}
