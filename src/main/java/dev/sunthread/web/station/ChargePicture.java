package dev.sunthread.web.station;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * What was loaded at a position when, as parts of a picture: time goes from left to right, each charge has a row of its
 * own, the newest on top; a line goes down at each clean point.
 *
 * @param from the time at the left edge
 * @param until the time at the right edge
 * @param height of the whole, in the picture's units; its width is a thousand
 */
public record ChargePicture(OffsetDateTime from, OffsetDateTime until, int height, List<Bar> bars, List<Mark> marks) {

    static final int WIDTH = 1000;
    static final int ROW = 24;
    private static final int NARROWEST = 3;
    private static final int ROOM_FOR_TEXT = 160;

    /**
     * A charge.
     *
     * @param open whether it still goes on
     * @param textX where its words stand: inside it if they fit, else beside it
     * @param textEnds whether its words end there rather than begin
     */
    public record Bar(PositionPage.Charge charge, int x, int y, int width, boolean open, int textX, boolean textEnds) {}

    /** A clean point. */
    public record Mark(PositionPage.Clean clean, int x) {}

    /** A picture of charges, which are given the newest first. */
    static ChargePicture of(
            List<PositionPage.Charge> charges, List<PositionPage.Clean> cleanPoints, OffsetDateTime now) {
        OffsetDateTime from = charges.stream()
                .map(PositionPage.Charge::from)
                .min(OffsetDateTime::compareTo)
                .orElse(now);
        OffsetDateTime until = rightEdge(charges, cleanPoints, from, now);
        List<Bar> bars = new ArrayList<>();
        for (PositionPage.Charge charge : charges) {
            int x = x(charge.from(), from, until);
            int width = Math.max(NARROWEST, x(end(charge, until), from, until) - x);
            bars.add(bar(charge, x, bars.size() * ROW, width));
        }
        List<Mark> marks = cleanPoints.stream()
                .filter(clean -> !clean.at().isBefore(from) && !clean.at().isAfter(until))
                .map(clean -> new Mark(clean, x(clean.at(), from, until)))
                .toList();
        return new ChargePicture(from, until, Math.max(1, charges.size()) * ROW, bars, marks);
    }

    /** A fifth behind the last that is recorded, so that a charge that goes on for long leaves room for the others. */
    private static OffsetDateTime rightEdge(
            List<PositionPage.Charge> charges,
            List<PositionPage.Clean> cleanPoints,
            OffsetDateTime from,
            OffsetDateTime now) {
        OffsetDateTime last = Stream.concat(
                        charges.stream().map(charge -> charge.until() == null ? charge.from() : charge.until()),
                        cleanPoints.stream().map(PositionPage.Clean::at))
                .max(OffsetDateTime::compareTo)
                .orElse(from);
        boolean goesOn = charges.stream().anyMatch(charge -> charge.until() == null);
        OffsetDateTime later =
                last.plus(Duration.between(from, last).dividedBy(5)).plusHours(1);
        if (!goesOn) {
            return last.isAfter(from) ? last : from.plusHours(1);
        }
        return later.isBefore(now) || !now.isAfter(from) ? later : now;
    }

    private static Bar bar(PositionPage.Charge charge, int x, int y, int width) {
        boolean fits = width >= ROOM_FOR_TEXT;
        boolean left = !fits && x + width + ROOM_FOR_TEXT > WIDTH;
        int textX = fits ? x + 6 : left ? x - 6 : x + width + 6;
        return new Bar(charge, x, y, width, charge.until() == null, textX, left);
    }

    private static OffsetDateTime end(PositionPage.Charge charge, OffsetDateTime edge) {
        OffsetDateTime until = charge.until() == null ? edge : charge.until();
        return until.isBefore(charge.from()) ? charge.from() : until;
    }

    private static int x(OffsetDateTime at, OffsetDateTime from, OffsetDateTime until) {
        double whole = Math.max(1, Duration.between(from, until).toSeconds());
        return (int) Math.round(WIDTH * Duration.between(from, at).toSeconds() / whole);
    }
}
