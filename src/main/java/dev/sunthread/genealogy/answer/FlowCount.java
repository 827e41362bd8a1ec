package dev.sunthread.genealogy.answer;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.Flow;
import dev.sunthread.genealogy.walk.Arrival;
import dev.sunthread.kernel.TraceRef;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * How many things of one level and class were reached from things of another, along their shortest paths; the near
 * level and class are absent where that is a suspect.
 */
public record FlowCount(
        @Nullable String nearLevel, @Nullable Certainty nearClass, String level, Certainty certainty, long things) {

    private record Step(
            @Nullable String nearLevel, @Nullable Certainty nearClass, String level, Certainty certainty) {}

    /** The counts of an answer: each of its lines is in one of them, or in two if a kept line led to it. */
    public static List<FlowCount> of(Answer answer, Function<TraceRef, String> level) {
        return answer.reached().stream()
                .flatMap(arrival -> steps(answer, arrival, level))
                .collect(Collectors.groupingBy(step -> step, Collectors.counting()))
                .entrySet()
                .stream()
                .map(counted -> counted(counted.getKey(), counted.getValue()))
                .toList();
    }

    private static FlowCount counted(Step step, long things) {
        return new FlowCount(step.nearLevel(), step.nearClass(), step.level(), step.certainty(), things);
    }

    // what a kept line leads to is drawn as coming out of the line, and the line out of what it names
    private static Stream<Step> steps(Answer answer, Arrival arrival, Function<TraceRef, String> level) {
        Step step = step(answer, arrival, level);
        return answer.isReachedByLine(arrival)
                ? Stream.of(
                        new Step(step.nearLevel(), step.nearClass(), Flow.KEPT_LINE, Certainty.POSSIBLE),
                        new Step(Flow.KEPT_LINE, Certainty.POSSIBLE, step.level(), step.certainty()))
                : Stream.of(step);
    }

    private static Step step(Answer answer, Arrival arrival, Function<TraceRef, String> level) {
        TraceRef near = answer.reachedFrom(arrival);
        String own = level.apply(arrival.node());
        return near == null
                ? new Step(null, null, own, arrival.certainty())
                : new Step(level.apply(near), Objects.requireNonNull(answer.ever(near)), own, arrival.certainty());
    }
}
