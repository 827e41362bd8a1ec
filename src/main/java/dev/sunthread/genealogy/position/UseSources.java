package dev.sunthread.genealogy.position;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.kernel.TraceRef;
import java.util.List;
import java.util.stream.Stream;

/**
 * Answers whose lot a use drew from when its position wasn't recorded: every position of the station that ever held
 * the item counts, and only a scan that one of them bears out, or that none can contradict, is certain.
 */
public record UseSources(List<PositionTimeline> positions) {

    /** One line for each lot, in the order of the lots; empty if nothing of the item was ever loaded or scanned. */
    public List<Candidate> candidates(Use use) {
        List<PositionTimeline> holding = positions.stream()
                .filter(position -> position.everHeld(use.item()))
                .toList();
        TraceRef scanned = use.scanned();
        return scanned == null ? unscanned(holding, use) : scanned(scanned, holding, use);
    }

    private static List<Candidate> unscanned(List<PositionTimeline> holding, Use use) {
        return Candidate.oncePerLot(all(holding, use).map(candidate -> candidate.atMost(Certainty.POSSIBLE)));
    }

    private static List<Candidate> scanned(TraceRef lot, List<PositionTimeline> holding, Use use) {
        List<PositionTimeline> agreeing = holding.stream()
                .filter(position -> position.mayHaveHeld(lot, use.at()))
                .toList();
        if (holding.isEmpty()) {
            return List.of(PositionTimeline.byScan(lot));
        }
        boolean changed = agreeing.stream().anyMatch(position -> position.mayHaveChanged(lot, use.at()));
        Certainty most = changed ? Certainty.POSSIBLE : Certainty.CERTAIN;
        return Candidate.oncePerLot(all(agreeing.isEmpty() ? holding : orShown(lot, holding, use), use)
                .map(candidate -> candidate.atMost(most)));
    }

    private static List<PositionTimeline> orShown(TraceRef lot, List<PositionTimeline> holding, Use use) {
        return holding.stream()
                .filter(position -> position.mayHaveHeld(lot, use.at()) || position.isShownToHaveHeld(lot, use.at()))
                .toList();
    }

    private static Stream<Candidate> all(List<PositionTimeline> positions, Use use) {
        return positions.stream().flatMap(position -> position.candidates(use).stream());
    }
}
