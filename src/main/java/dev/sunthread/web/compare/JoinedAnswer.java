package dev.sunthread.web.compare;

import dev.sunthread.web.Paged;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Answers of several questions at one cut-off, joined: how many things are in all of them, in the first alone, and in
 * the first with no certainty about the others.
 */
public record JoinedAnswer(List<Part> parts, long cutoff, List<LevelRow> levels, Paged<Line> lines) {

    /**
     * One of the answers.
     *
     * @param letter A for the first
     * @param first the questions with this one first
     */
    public record Part(String letter, KeptAnswer answer, List<String> notes, String first) {}

    /** How many things of a level are joined so, by class. */
    public record LevelRow(String level, List<JoinedCount> counts) {

        /** Nought where none is counted. */
        public long of(String join, String certainty) {
            return counts.stream()
                    .filter(count ->
                            count.join().equals(join) && count.certainty().equals(certainty))
                    .mapToLong(JoinedCount::things)
                    .sum();
        }
    }

    /** How many things of a level and class are joined so. */
    public record JoinedCount(String join, String certainty, long things) {}

    /**
     * A thing that is joined as asked.
     *
     * @param certainty for {@code all} the weakest of its classes, else its class in the first answer
     * @param place where it is; absent for what is no unit
     * @param sides what each answer says of it, in the order of the questions
     */
    public record Line(
            String kind,
            String level,
            String item,
            String name,
            @Nullable String issuer,
            String certainty,
            @Nullable String place,
            List<Side> sides) {}

    /** What one answer says of a thing; both are absent if it is not in it. */
    public record Side(@Nullable String certainty, @Nullable String reason) {

        static final Side NONE = new Side(null, null);
    }
}
