package dev.sunthread.web.compare;

import dev.sunthread.web.Paged;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What joined, left and changed its class from one answer to another; both as kept. */
public record AnswerDifference(KeptAnswer left, KeptAnswer right, List<LevelRow> levels, Paged<Line> lines) {

    /** How many things of a level are in both with the same class, joined, left, or changed their class. */
    public record LevelRow(String level, long same, long joined, long left, long changed) {}

    /** A thing that differs, with its class in each answer; absent where it is not in it. */
    public record Line(
            String difference,
            String kind,
            String level,
            String item,
            String name,
            @Nullable String issuer,
            @Nullable String before,
            @Nullable String after,
            String reason) {}
}
