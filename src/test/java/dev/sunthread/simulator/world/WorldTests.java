package dev.sunthread.simulator.world;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.simulator.world.Assembly.Birth;
import dev.sunthread.simulator.world.Assembly.Child;
import dev.sunthread.simulator.world.Assembly.Installation;
import dev.sunthread.simulator.world.Assembly.Removal;
import dev.sunthread.simulator.world.Loading.Charge;
import dev.sunthread.simulator.world.Loading.Discharge;
import dev.sunthread.simulator.world.Supply.Blend;
import dev.sunthread.simulator.world.Supply.Receipt;
import dev.sunthread.simulator.world.Supply.Recovery;
import dev.sunthread.simulator.world.Work.Step;
import dev.sunthread.simulator.world.Work.Use;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Matter moves as it does on a shop floor. */
class WorldTests {

    private static final Place VALVE = new Place("BOND", "V1");
    private static final Thing A = Thing.lot("A");
    private static final Thing B = Thing.lot("B");

    private final World world = new World();

    @BeforeEach
    void receiveAndBear() {
        List.of("A", "B").forEach(lot -> world.happens(new Receipt(0, lot, "ADH", List.of())));
        List.of("r1", "r2", "w1", "w2").forEach(unit -> world.happens(new Birth(0, unit, unit, null)));
    }

    @Test
    void whatActsOnAParentActsOnEverythingInside() {
        install("r1", "w1");
        use("w1", "A");
        takeOut("r1", "w1");
        assertThat(world.present(Thing.unit("r1"))).contains(A);
        assertThat(world.present(Thing.unit("r2"))).doesNotContain(A);
    }

    @Test
    void whatActsOnAChildActsOnEverythingAroundUnlessOnItAlone() {
        install("r1", "w1");
        install("r2", "w1");
        use("r1", "A");
        world.happens(step("r1", true, new Use("ADH", new Source("B", null), null, Set.of())));
        assertThat(world.present(Thing.unit("r2"))).contains(A).doesNotContain(B);
    }

    @Test
    void aChildTakenOutLeavesThePresentButHadTouched() {
        use("r1", "A");
        install("r1", "w1");
        takeOut("r1", "w1");
        install("w1", "w2");
        assertThat(world.present(Thing.unit("w2"))).doesNotContain(A);
        assertThat(world.touched(Thing.unit("w2"))).contains(A, Thing.unit("r1"));
    }

    @Test
    void whatIsRecoveredFromAUnitStaysInTheLotWhenChildrenLeave() {
        use("r1", "A");
        install("r1", "w1");
        world.happens(new Recovery(0, "w1", "C", null));
        takeOut("r1", "w1");
        use("r2", "C");
        assertThat(world.present(Thing.unit("r2"))).contains(A, Thing.unit("r1"));
    }

    @Test
    void aLotUsedBeforeItIsToppedUpStaysCleanForThatUse() {
        use("r1", "A");
        world.happens(new Blend(0, "A", "ADH", true, List.of(new Source("B", null))));
        use("r2", "A");
        assertThat(world.present(Thing.unit("r1"))).doesNotContain(B);
        assertThat(world.present(Thing.unit("r2"))).contains(B);
    }

    @Test
    void earlierLoadsGoAlongUntilThePositionIsPurged() {
        Source a = new Source("A", null);
        Source b = new Source("B", null);
        world.happens(new Charge(0, VALVE, a));
        world.happens(new Discharge(0, VALVE, a, null, Set.of()));
        world.happens(new Charge(0, VALVE, b));
        assertThat(world.leftAt(VALVE)).containsExactly(a);
        world.happens(step("r1", false, new Use("ADH", b, VALVE, Set.of(a))));
        world.happens(new Loading.Purge(0, VALVE));
        assertThat(world.leftAt(VALVE)).isEmpty();
        assertThat(world.present(Thing.unit("r1"))).contains(A, B);
    }

    @Test
    void usesCountFromWhenEachLoadWasTakenOff() {
        Source a = new Source("A", null);
        Source b = new Source("B", null);
        for (Source next : List.of(a, b)) {
            world.happens(new Charge(0, VALVE, next));
            world.happens(step("r1", false, new Use("ADH", next, VALVE, Set.of())));
            world.happens(new Discharge(0, VALVE, next, null, Set.of()));
        }
        assertThat(world.usesSinceLeft(VALVE, a)).isEqualTo(1);
        assertThat(world.usesSinceLeft(VALVE, b)).isZero();
    }

    @Test
    void aRunActsOnWhateverComesIntoTheOvenWhileItGoesOn() {
        Heat.Begin begin = new Heat.Begin(0, "cure1", Set.of(), Set.of("K1"));
        world.happens(new Heat.Load(0, "K1", "T1", false, null));
        world.happens(begin);
        world.happens(new Heat.Load(0, "T1", "r1", true, null));
        world.happens(new Heat.Unload(0, "T1", "r1", true, null));
        world.happens(new Heat.End(0, begin, "CURE", "OVEN-1"));
        world.happens(new Heat.Load(0, "T1", "r2", true, null));
        Thing run = new Thing(Thing.Kind.CURE_RUN, "cure1");
        assertThat(world.present(Thing.unit("r1"))).contains(run);
        assertThat(world.present(Thing.unit("r2"))).doesNotContain(run);
    }

    private void use(String unit, String lot) {
        world.happens(step(unit, false, new Use("ADH", new Source(lot, null), null, Set.of())));
    }

    private static Step step(String unit, boolean alone, Use use) {
        return new Step(0, 0, "s-" + unit, "bond", "BOND", List.of(unit), alone, List.of(use));
    }

    private void install(String child, String parent) {
        world.happens(new Installation(0, new Child(child, null), parent, child, null));
    }

    private void takeOut(String child, String parent) {
        world.happens(new Removal(0, new Child(child, null), parent, child, null));
    }
}
