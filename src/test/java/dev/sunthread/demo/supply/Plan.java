package dev.sunthread.demo.supply;

import dev.sunthread.demo.told.PlantTime;
import java.time.OffsetDateTime;
import java.util.Map;
import java.util.TreeMap;

/** Which lot serves from when on, as the line really works. */
public final class Plan {

    private final TreeMap<OffsetDateTime, String> lots = new TreeMap<>();

    /** Reads steps such as {@code 5:C-101 10@06:50:C-103}: a day, a time unless it is early morning, and the lot. */
    public static Plan of(String steps) {
        Plan plan = new Plan();
        for (String step : steps.split(" ")) {
            String[] dayAndRest = step.split("[@:]", 2);
            int lotAt = step.lastIndexOf(':') + 1;
            String time = step.contains("@") ? step.substring(step.indexOf('@') + 1, lotAt - 1) : "05:00";
            plan.from(PlantTime.at(Integer.parseInt(dayAndRest[0]), time), step.substring(lotAt));
        }
        return plan;
    }

    public void from(OffsetDateTime moment, String lot) {
        lots.put(moment, lot);
    }

    public String at(OffsetDateTime moment) {
        Map.Entry<OffsetDateTime, String> serving = lots.floorEntry(moment);
        if (serving == null) {
            throw new IllegalStateException("no lot serves at " + moment);
        }
        return serving.getValue();
    }
}
