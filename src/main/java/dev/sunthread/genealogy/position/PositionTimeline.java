package dev.sunthread.genealogy.position;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.position.Change.Charge;
import dev.sunthread.genealogy.position.Change.Discharge;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.genealogy.walk.Reason;
import dev.sunthread.kernel.TraceRef;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What the records of one position say about where a use there drew from. One lot at most is inferred as certain; every
 * lot that may have been loaded, and every earlier one since the last clean point, whatever its item, is possible.
 *
 * <p>A lot that was scanned here while no charge shows it was loaded since the change before. So it is possible for what
 * was not scanned then, and is left behind as any other.
 *
 * <p>A lot is left out only if it came on surely later, or left surely before a clean point that is surely before the
 * use. All ties count for the wider answer. A query looks at the lots since the last clean point.
 */
public final class PositionTimeline {

    public static final String CARRIED_OVER = "carried-over";

    private record Dated(Loading loading, long carriesUntil) {

        boolean reaches(Moment use) {
            return loading.mayHaveBegunBy(use) && (loading.mayServe(use) || use.early() <= carriesUntil);
        }
    }

    private final Cover cover;
    private final List<Doubt> doubts;
    private final Meanwhile meanwhile;
    private final Map<Dated, Untold> untold = new HashMap<>();
    private final List<Dated> loadings;
    private final long[] lastReachSoFar;
    private final Map<TraceRef, Long> firstScans = new HashMap<>();

    private PositionTimeline(
            Loadings loadings,
            Collection<Use> uses,
            CleanPoints cleanPoints,
            CarryOverLimits limits,
            Cover cover,
            List<Doubt> doubts) {
        this.cover = cover;
        this.doubts = doubts;
        this.meanwhile = loadings.meanwhile();
        uses.stream()
                .filter(use -> use.scanned() != null)
                .forEach(use -> firstScans.merge(
                        Objects.requireNonNull(use.scanned()), use.at().early(), Math::min));
        List<Loading> recorded = loadings.all();
        this.loadings = Stream.of(recorded.stream(), loadings.shownBy(uses, recorded), loadings.doubted())
                .flatMap(some -> some)
                .map(loading -> dated(loading, cleanPoints, limits))
                .sorted(Comparator.comparingLong(dated -> dated.loading().mayBeFrom()))
                .toList();
        loadings.untold(uses.stream().filter(this::isOpen), cover)
                .forEach((loading, load) -> untold.put(dated(loading, cleanPoints, limits), load));
        Set<Long> drawn = uses.stream().map(Use::item).collect(Collectors.toSet());
        loadings.cameOffUnrecorded(drawn)
                .forEach((loading, load) -> untold.put(dated(loading, cleanPoints, limits), load));
        this.lastReachSoFar = new long[this.loadings.size()];
        long last = Long.MIN_VALUE;
        for (int i = 0; i < lastReachSoFar.length; i++) {
            Dated dated = this.loadings.get(i);
            last = Math.max(last, Math.max(dated.carriesUntil(), dated.loading().mayBeTo()));
            lastReachSoFar[i] = last;
        }
    }

    private static Dated dated(Loading loading, CleanPoints cleanPoints, CarryOverLimits limits) {
        return new Dated(
                loading, Math.min(cleanPoints.endOfCarryOver(loading.left()), limits.endOfCarryOver(loading.left())));
    }

    /** The timeline of a position; {@code uses} are the moments of all uses that name it. */
    public static PositionTimeline of(
            String position,
            Collection<Charge> charges,
            Collection<Discharge> discharges,
            Collection<Moment> cleanPoints,
            Collection<Moment> uses) {
        return of(
                position,
                new Changes(List.copyOf(charges), List.copyOf(discharges)),
                cleanPoints,
                uses.stream().map(at -> new Use(at, -1, null)).toList(),
                CarryOverLimits.NONE);
    }

    /** The same with what uses scanned, and limits of what is carried over. */
    public static PositionTimeline of(
            String position,
            Changes changes,
            Collection<Moment> cleanPoints,
            Collection<Use> uses,
            CarryOverLimits limits) {
        UseMoments moments = new UseMoments(uses.stream().map(Use::at).toList());
        Loadings loadings = new Loadings(position, changes.charges(), changes.discharges(), moments, changes.doubts());
        Cover cover = new Cover(changes.charges(), changes.discharges(), changes.doubts());
        return new PositionTimeline(loadings, uses, new CleanPoints(cleanPoints), limits, cover, changes.doubts());
    }

    /** Whether a lot of the item, or one whose item isn't known, was ever recorded here. */
    public boolean everHeld(long item) {
        return loadings.stream()
                        .map(Dated::loading)
                        .filter(loading -> !loading.isByScan())
                        .anyMatch(loading -> loading.item() == null || loading.isOf(item))
                || doubts.stream().anyMatch(doubt -> doubt.mayHold(item));
    }

    /** Whether records of the position tell that the lot may have been the one loaded at the moment of the use. */
    public boolean mayHaveHeld(TraceRef lot, Moment use) {
        return reaching(use).stream()
                .anyMatch(loading -> !loading.isByScan() && loading.lot().equals(lot) && loading.mayServe(use));
    }

    /** Whether a scan of the lot at another use tells that. */
    public boolean isShownToHaveHeld(TraceRef lot, Moment use) {
        return reaching(use).stream()
                .anyMatch(loading -> loading.isByScan() && loading.lot().equals(lot) && loading.mayServe(use));
    }

    /** Every lot that may have been here, and until when it, or something of it that was left behind, still may. */
    public Map<TraceRef, Long> ends() {
        Map<TraceRef, Long> ends = new HashMap<>();
        loadings.forEach(dated -> ends.merge(
                dated.loading().lot(),
                Math.max(dated.carriesUntil(), dated.loading().mayBeTo()),
                Math::max));
        return ends;
    }

    /** The earliest that the lot was scanned here; without end if it was not. */
    public long firstScanOf(TraceRef lot) {
        return firstScans.getOrDefault(lot, Long.MAX_VALUE);
    }

    /** All lots that the use may have drawn from, one line each, in the order of the lots. */
    public List<Candidate> candidates(Use use) {
        List<Loading> reaching = reaching(use.at());
        Stream<Candidate> given = reaching.stream()
                .map(loading -> isContradicted(loading, reaching, use.at())
                        ? candidate(loading, use).atMost(Certainty.POSSIBLE)
                        : candidate(loading, use));
        TraceRef scanned = use.scanned();
        if (scanned == null) {
            return Candidate.oncePerLot(given);
        }
        Stream<Candidate> others = given.filter(candidate -> !candidate.lot().equals(scanned))
                .map(candidate -> candidate.atMost(Certainty.POSSIBLE));
        return Candidate.oncePerLot(Stream.concat(Stream.of(scanned(scanned, use)), others));
    }

    private static boolean isContradicted(Loading loading, List<Loading> reaching, Moment use) {
        return reaching.stream()
                .anyMatch(other ->
                        other.isByScan() && other.mayServe(use) && !other.lot().equals(loading.lot()));
    }

    /**
     * What the use may have drawn from though no record tells its lot: what uses without a scan show where nothing is
     * charged is loaded since the change before, and left behind as any other.
     */
    public List<Untold> untold(Use use) {
        return untold.entrySet().stream()
                .filter(load -> load.getKey().reaches(use.at()))
                .map(Map.Entry::getValue)
                .toList();
    }

    /** What may go on as a new lot when the position is unloaded; the item doesn't matter. */
    public List<Candidate> unloaded(Use use) {
        List<Loading> reaching = reaching(use.at());
        return Candidate.oncePerLot(reaching.stream().map(loading -> {
            boolean sure = loading.surelyServes(use.at()) && !isContradicted(loading, reaching, use.at());
            String kind = loading.mayServe(use.at()) ? "unloaded" : CARRIED_OVER;
            return new Candidate(loading.lot(), sure ? Certainty.CERTAIN : Certainty.POSSIBLE, loading.reason(kind));
        }));
    }

    /**
     * Whether records show that some lot of the item was loaded at the use: the last charge before it was of that item
     * or of one that is not known, and nothing may have come off since.
     */
    public boolean surelyHeldSome(Use use) {
        return cover.surelyHeld(use);
    }

    /** Whether a step may have gone on with another lot than the one it scanned, for what was loaded changed meanwhile. */
    public boolean mayHaveChanged(TraceRef scanned, Moment step) {
        return meanwhile.mayHaveLeft(scanned, step);
    }

    /** Whether a step may have gone on with another container of the lot than the one it scanned. */
    public boolean isChangedDuring(Moment step) {
        return meanwhile.isChanged(step);
    }

    /** Whether what a step scanned came off while it went on, and no record tells what came in its place. */
    public boolean ranOutDuring(Moment step) {
        return meanwhile.ranOut(step);
    }

    private boolean isOpen(Use use) {
        return use.scanned() == null ? !cover.surelyHeld(use) : meanwhile.ranOut(use.at());
    }

    private Candidate scanned(TraceRef lot, Use use) {
        Candidate unsupported = new Candidate(lot, Certainty.POSSIBLE, Reason.of("scan-disagrees", 0));
        Candidate scanned = reaching(use.at()).stream()
                .filter(loading -> !loading.isByScan() && loading.lot().equals(lot) && loading.mayServe(use.at()))
                .map(loading -> new Candidate(lot, Certainty.CERTAIN, loading.reason("scanned")))
                .min(Candidate.TELLING)
                .orElse(loadings.stream().map(Dated::loading).allMatch(Loading::isByScan) ? byScan(lot) : unsupported);
        return scanned != unsupported && meanwhile.mayHaveLeft(lot, use.at())
                ? new Candidate(lot, Certainty.POSSIBLE, Reason.of("changed-meanwhile", 0))
                : scanned;
    }

    /** A lot known by the scan alone. */
    public static Candidate byScan(TraceRef lot) {
        return new Candidate(lot, Certainty.CERTAIN, Reason.of("scanned", 0));
    }

    private static Candidate candidate(Loading loading, Use use) {
        boolean sure = loading.surelyServes(use.at()) && loading.isOf(use.item());
        return new Candidate(loading.lot(), sure ? Certainty.CERTAIN : Certainty.POSSIBLE, reason(loading, use));
    }

    private static Reason reason(Loading loading, Use use) {
        boolean otherItem = loading.item() != null && !loading.isOf(use.item());
        if (!loading.mayServe(use.at())) {
            return loading.reason(CARRIED_OVER);
        }
        return otherItem ? loading.reason("other-item-loaded") : loading.reason(servedAs(loading, use.at()));
    }

    private static String servedAs(Loading loading, Moment use) {
        return loading.surelyServes(use) ? "inferred" : "may-be-loaded";
    }

    private List<Loading> reaching(Moment use) {
        List<Loading> reaching = new ArrayList<>();
        for (int i = begunBy(use) - 1; i >= 0 && lastReachSoFar[i] >= use.early(); i--) {
            if (loadings.get(i).reaches(use)) {
                reaching.add(loadings.get(i).loading());
            }
        }
        return reaching;
    }

    private int begunBy(Moment use) {
        int low = 0;
        int high = loadings.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (loadings.get(middle).loading().mayHaveBegunBy(use)) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
