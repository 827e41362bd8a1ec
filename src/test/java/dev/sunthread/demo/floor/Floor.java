package dev.sunthread.demo.floor;

import dev.sunthread.demo.told.Notebook;
import dev.sunthread.demo.told.Teller;
import dev.sunthread.simulator.world.Happening;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoField;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The shop floor: what truly happens on it, and who tells of it. */
public final class Floor {

    private static final List<String> STATIONS = List.of(
            "BOND-1",
            "BOND-2",
            "OVEN",
            "SORT-1",
            "WALL-1",
            "WALL-2",
            "SOLDER-1",
            "SOLDER-2",
            "COAT-1",
            "OPTIC-1",
            "LAMP-1",
            "TEST-1",
            "SEAL-1",
            "MIRROR-1",
            "GLASS-1",
            "FRAME-1",
            "PACK-1",
            "STORE-1");

    private final Notebook notes;
    private final int traysADay;
    private final List<Happening> happened = new ArrayList<>();

    public Floor(Notebook notes, int traysADay) {
        this.notes = notes;
        this.traysADay = traysADay;
    }

    public Notebook notes() {
        return notes;
    }

    /** How wide the line is: trays of twenty receivers begun on a working day. */
    public int traysADay() {
        return traysADay;
    }

    public void happens(Happening happening) {
        happened.add(happening);
    }

    /** All that truly happened, in its order. */
    public List<Happening> happened() {
        return happened.stream().sorted(Comparator.comparingLong(Happening::at)).toList();
    }

    /** The operator at a station then: an early and a late crew, which change places every other week. */
    public Teller crew(String station, OffsetDateTime at) {
        int late = at.getHour() < 14 ? 0 : 1;
        int week = at.get(ChronoField.ALIGNED_WEEK_OF_YEAR) % 2;
        int mark = 1 + STATIONS.indexOf(station) + STATIONS.size() * (late ^ week);
        return notes.teller("op-%02d".formatted(mark), station);
    }

    public Teller quality() {
        return notes.teller("qe-02", "quality");
    }

    public Teller store() {
        return notes.teller("wh-01", "store");
    }

    public static long micros(OffsetDateTime at) {
        return ChronoUnit.MICROS.between(OffsetDateTime.parse("1970-01-01T00:00:00Z"), at);
    }
}
