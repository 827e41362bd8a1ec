package dev.sunthread.cure.profile;

import java.util.ArrayList;
import java.util.List;

/**
 * How much of a run its readings tell.
 *
 * @param told the lines between readings near enough to each other, and level ones from the run's ends to readings near them
 * @param unknown seconds of the run that no line tells: gaps between readings, before the first, behind the last
 */
public record Coverage(List<Segment> told, double unknown) {

    /**
     * What readings tell of a run.
     *
     * @param run how long it took, in seconds
     * @param longestGap up to what distance, in seconds, two readings tell what was between them
     */
    public static Coverage of(Readings readings, double run, double longestGap) {
        List<Segment> told = new ArrayList<>();
        double before = readings.start();
        double behind = run - readings.end();
        double unknown = beyond(before, longestGap) + beyond(behind, longestGap);
        if (before > 0 && before <= longestGap) {
            told.add(level(0, before, readings.value(0)));
        }
        for (Segment segment : readings.segments()) {
            if (segment.seconds() > longestGap) {
                unknown += segment.seconds();
            } else {
                told.add(segment);
            }
        }
        if (behind > 0 && behind <= longestGap) {
            told.add(level(readings.end(), run, readings.value(readings.size() - 1)));
        }
        return new Coverage(told, unknown);
    }

    private static Segment level(double from, double to, double value) {
        return new Segment(from, value, to, value);
    }

    private static double beyond(double distance, double longestGap) {
        return distance > longestGap ? distance : 0;
    }

    public boolean isWhole() {
        return unknown == 0;
    }
}
