package dev.sunthread.demo.supply;

import dev.sunthread.demo.told.PlantTime;
import dev.sunthread.simulator.world.Source;
import dev.sunthread.simulator.world.Work;
import java.util.Set;

/** Material that people take in by hand from the box of the day. */
public final class Stocks {

    private Stocks() {}

    /** What one unit takes in of a material on a working day. */
    public static Taken take(String item, int workday, String quantity) {
        Material material = Material.of(item);
        Source source = new Source(material.lotOn(Math.min(workday, PlantTime.WORKDAYS - 1), 0), null);
        return Taken.of(new Work.Use(item, source, null, Set.of()), quantity, material.unitOfMeasure());
    }
}
