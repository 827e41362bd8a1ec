package dev.sunthread.genealogy.position;

import static dev.sunthread.genealogy.Certainty.CERTAIN;
import static dev.sunthread.genealogy.Certainty.POSSIBLE;
import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.kernel.TraceRef;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class UseSourcesTests {

    private static final TraceRef A = TraceRef.lot(1);
    private static final TraceRef B = TraceRef.lot(2);
    private static final TraceRef X = TraceRef.lot(3);

    private final Valve left = new Valve().on(A, 0);
    private final Valve right = new Valve().on(B, 0);
    private final Valve primer = new Valve().on(X, Valve.PRIMER, Moment.at(0));

    @Test
    void everyPositionThatHeldTheItemIsPossible() {
        assertThat(sources(null)).isEqualTo(Map.of(A, POSSIBLE, B, POSSIBLE));
    }

    @Test
    void scanSettlesWhichPositionItWas() {
        assertThat(sources(A)).isEqualTo(Map.of(A, CERTAIN));
    }

    @Test
    void scanOfALotThatWasNowhereLoadedSettlesNothing() {
        assertThat(sources(X)).isEqualTo(Map.of(A, POSSIBLE, B, POSSIBLE, X, POSSIBLE));
    }

    @Test
    void scanAloneIsCertainWhereTheItemWasNeverLoaded() {
        UseSources sources = new UseSources(List.of(primer.timeline()));
        assertThat(Valve.classes(sources.candidates(new Use(Moment.at(5), Valve.ADHESIVE, A))))
                .isEqualTo(Map.of(A, CERTAIN));
    }

    @Test
    void scanIsNotSureWhereOnePositionOfTheLotChangedMeanwhile() {
        left.on(B, 5);
        UseSources sources =
                new UseSources(List.of(left.timeline(), new Valve().on(A, 0).timeline()));
        assertThat(Valve.classes(sources.candidates(new Use(new Moment(3, 7), Valve.ADHESIVE, A))))
                .isEqualTo(Map.of(A, POSSIBLE, B, POSSIBLE));
    }

    private Map<TraceRef, Certainty> sources(@Nullable TraceRef scanned) {
        UseSources sources = new UseSources(List.of(left.timeline(), right.timeline(), primer.timeline()));
        return Valve.classes(sources.candidates(new Use(Moment.at(5), Valve.ADHESIVE, scanned)));
    }
}
