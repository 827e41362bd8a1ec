package dev.sunthread.materials;

import dev.sunthread.catalog.ItemLives;
import dev.sunthread.holds.Holds;
import dev.sunthread.holds.Passes;
import dev.sunthread.holds.SoftRule;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Fact;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** What must hold of a container before something out of it is loaded or used. */
@Component
public class ContainerRules {

    private final Containers containers;
    private final ContainerAges ages;
    private final ItemLives lives;
    private final Holds holds;
    private final Passes passes;

    ContainerRules(Containers containers, ContainerAges ages, ItemLives lives, Holds holds, Passes passes) {
        this.containers = containers;
        this.ages = ages;
        this.lives = lives;
        this.holds = holds;
        this.passes = passes;
    }

    /**
     * Notes or refuses what is wrong with a container.
     *
     * @param item the item of what is in it; absent if nothing tells it
     * @param operation the operation that uses it; absent if it is loaded
     */
    public void containerMayBeUsed(Fact<?> fact, long container, @Nullable Long item, @Nullable String operation) {
        containerIsNotOnHold(fact, container);
        ContainerAge age = ages.of(container, fact.occurredAt());
        containerIsNotEmpty(fact, container, age);
        if (item != null) {
            ItemLives.Life life = lives.of(item, fact.occurredAt());
            containerIsWithinItsOpenLife(fact, container, operation, age.openedAt(), life.open());
            containerIsWithinItsOutLife(fact, container, operation, age.out(), life.out());
        }
    }

    private void containerIsNotOnHold(Fact<?> fact, long container) {
        holds.on(TraceRef.container(container))
                .forEach(hold -> fact.breaks(
                        "container-is-not-on-hold",
                        "Container " + containers.label(container) + " is on hold: " + hold.reason(),
                        "Set it aside and ask quality",
                        TraceRef.container(container)));
    }

    private void containerIsNotEmpty(Fact<?> fact, long container, ContainerAge age) {
        if (age.endedAt() != null && age.endedAt().isBefore(fact.occurredAt())) {
            fact.breaks(
                    "container-is-not-empty",
                    "Nothing was left in container " + containers.label(container)
                            + " any more, by its recorded ending",
                    "Find out which container it was, or void the ending that is wrong",
                    TraceRef.container(container));
        }
    }

    private void containerIsWithinItsOpenLife(
            Fact<?> fact,
            long container,
            @Nullable String operation,
            @Nullable OffsetDateTime openedAt,
            @Nullable Duration life) {
        if (openedAt != null && life != null && fact.occurredAt().isAfter(openedAt.plus(life))) {
            tooOld(
                    fact,
                    SoftRule.CONTAINER_IS_WITHIN_ITS_OPEN_LIFE,
                    operation,
                    container,
                    " was opened " + words(Duration.between(openedAt, fact.occurredAt())) + " ago and may be used for "
                            + words(life));
        }
    }

    private void containerIsWithinItsOutLife(
            Fact<?> fact, long container, @Nullable String operation, Duration out, @Nullable Duration life) {
        if (life != null && out.compareTo(life) > 0) {
            tooOld(
                    fact,
                    SoftRule.CONTAINER_IS_WITHIN_ITS_OUT_LIFE,
                    operation,
                    container,
                    " was at room temperature for " + words(out) + " in all and may be for " + words(life));
        }
    }

    private void tooOld(Fact<?> fact, SoftRule rule, @Nullable String operation, long container, String sentence) {
        passes.breaks(
                fact,
                rule,
                operation,
                new Passes.Words(
                        "Container " + containers.label(container) + sentence, "Take a fresh one; set this one aside"),
                List.of(TraceRef.container(container)));
    }

    private static String words(Duration time) {
        return time.toHours() + " h " + time.toMinutesPart() + " min";
    }
}
