package dev.sunthread.demo.supply;

import dev.sunthread.demo.told.Bodies;
import dev.sunthread.demo.told.Notebook;
import dev.sunthread.demo.told.PlantTime;
import dev.sunthread.demo.told.Table;
import dev.sunthread.demo.told.Teller;
import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import tools.jackson.databind.node.ObjectNode;

/** Loads positions and takes them empty, cleanly by day and otherwise where a story needs it. */
public final class Loading {

    /** Changes early in the morning, with the position purged before the next lot. */
    private static final String CLEAN = """
            BOND-1   | V1    | 5:A-11 10:A-13 13:A-16 18:A-18 24:A-21
            BOND-1   | V2    | 5:A-12 11:A-17
            BOND-1   | V2    | 20:A-20 26:A-22
            BOND-2   | V1    | 5:A-11 9:A-14 12:A-17 16:A-16
            BOND-2   | V1    | 25:A-21
            BOND-2   | V2    | 5:A-12 10:A-15 16:A-18
            BOND-2   | V2    | 25:A-22
            SOLDER-1 | WIRE  | 5:W-31 16:W-32 25:W-33
            SOLDER-1 | FLUX  | 5:F-41 12:F-42 23:F-43
            COAT-1   | POT   | 5:K-51 11:K-52 18:K-53 26:K-54
            OPTIC-1  | UV    | 5:U-61 13:U-62 24:U-63
            SEAL-1   | GUN-A | 6:Q-71 16:Q-73 25:Q-75
            SEAL-1   | GUN-B | 6:Q-72 18:Q-74 26:Q-75
            MIRROR-1 | EPOXY | 9:E-85 20:E-86
            GLASS-1  | GUN   | 9:Q-71 18:Q-74 27:Q-75
            """;

    private final Notebook notes;
    private final Map<String, Plan> plans = new LinkedHashMap<>();
    private final Map<String, String> loaded = new LinkedHashMap<>();

    public Loading(Notebook notes) {
        this.notes = notes;
    }

    /** The lot that is truly at a position then. */
    public String lotAt(String station, String position, OffsetDateTime moment) {
        return Objects.requireNonNull(plans.get(station + "/" + position), position)
                .at(moment);
    }

    /** Tells every change of the month. */
    public void tell() {
        List<List<String>> rows = Table.rows(CLEAN);
        changeCleanly(rows.get(0));
        changeCleanly(rows.get(1));
        nextLotWithoutPurge();
        changeCleanly(rows.get(2));
        changeCleanly(rows.get(3));
        nextLotWithoutDischarge();
        changeCleanly(rows.get(4));
        changeCleanly(rows.get(5));
        emptyWhileBonding();
        rows.subList(6, rows.size()).forEach(this::changeCleanly);
    }

    private void nextLotWithoutPurge() {
        discharge("BOND-1", "V2", PlantTime.at(13, "05:41"));
        charge("BOND-1", "V2", PlantTime.at(13, "05:46"), "A-19");
        clean("BOND-1", "V2", PlantTime.at(17, "05:38"));
    }

    private void nextLotWithoutDischarge() {
        charge("BOND-2", "V1", PlantTime.at(18, "06:58"), "A-20");
        clean("BOND-2", "V1", PlantTime.at(19, "05:36"));
    }

    private void emptyWhileBonding() {
        discharge("BOND-2", "V2", PlantTime.at(19, "06:40"));
        charge("BOND-2", "V2", PlantTime.at(19, "07:12"), "A-19");
        clean("BOND-2", "V2", PlantTime.at(20, "05:36"));
    }

    private void changeCleanly(List<String> row) {
        for (String change : row.get(2).split(" ")) {
            String[] dayAndLot = change.split(":");
            int day = Integer.parseInt(dayAndLot[0]);
            if (loaded.containsKey(row.get(0) + "/" + row.get(1))) {
                discharge(row.get(0), row.get(1), PlantTime.at(day, "05:40"));
                clean(row.get(0), row.get(1), PlantTime.at(day, "05:48"));
            }
            charge(row.get(0), row.get(1), PlantTime.at(day, "05:56"), dayAndLot[1]);
        }
    }

    private void charge(String station, String position, OffsetDateTime at, String lot) {
        String place = station + "/" + position;
        loaded.put(place, lot);
        plans.computeIfAbsent(place, p -> new Plan()).from(at, lot);
        ObjectNode body = Bodies.of("lot", lot, "station", station, "position", position);
        operator(station, at).tell(at, "charge", body);
    }

    private void discharge(String station, String position, OffsetDateTime at) {
        String lot = Objects.requireNonNull(loaded.get(station + "/" + position));
        ObjectNode body = Bodies.of("station", station, "position", position, "lot", lot);
        operator(station, at).tell(at, "discharge", body);
    }

    private void clean(String station, String position, OffsetDateTime at) {
        ObjectNode body = Bodies.of("station", station, "position", position);
        body.put("evidence", "Purged and wiped; no residue seen at the outlet");
        operator(station, at).tell(at, "clean-point", body);
    }

    private Teller operator(String station, OffsetDateTime at) {
        return Crew.at(notes, station, at);
    }
}
