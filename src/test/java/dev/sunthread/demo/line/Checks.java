package dev.sunthread.demo.line;

import dev.sunthread.demo.floor.Floor;
import dev.sunthread.demo.told.Bodies;
import dev.sunthread.demo.told.PlantTime;
import dev.sunthread.demo.told.Teller;
import java.util.List;

/** Calibrations and verifications of ovens, lamp and rigs; one oven drifts, one rig is found out. */
final class Checks {

    private static final int OVEN_FOUND_BAD = 25;
    private static final int RIG_FOUND_BAD = 38;

    private final Teller metrology;

    Checks(Floor floor) {
        this.metrology = floor.notes().teller("me-01", "metrology");
    }

    void before() {
        for (String equipment :
                List.of("OVEN-1", "OVEN-2", "UVT-1", "ROOM-1", "ROOM-2", "RIG-W1", "RIG-W2", "RIG-M1", "RIG-G1")) {
            tell(
                    -4,
                    "10:0" + equipment.length() % 10,
                    "calibration",
                    equipment,
                    "good",
                    "Certificate of the year 2026");
        }
    }

    void on(int day) {
        if (day % 5 == 0) {
            boolean drifted = day == OVEN_FOUND_BAD;
            tell(day, "05:02", "verification", "OVEN-1", "good", "Reference thermocouple within 1 K on all shelves");
            if (drifted) {
                ovenIsFoundBad(day);
            } else {
                tell(
                        day,
                        "05:06",
                        "verification",
                        "OVEN-2",
                        "good",
                        "Reference thermocouple within 1 K on all shelves");
            }
            readRadiometer(day);
        }
        if (day == OVEN_FOUND_BAD) {
            tell(day, "06:20", "calibration", "OVEN-2", "good", "TC-3 replaced; five thermocouples compared");
        }
        checkRigs(day);
    }

    private void ovenIsFoundBad(int day) {
        tell(
                day,
                "05:06",
                "OVEN-2",
                "bad",
                "Thermocouple TC-3 reads 9 K high against the reference; the load was colder than told",
                "errors",
                List.of(Bodies.of("sensor", "TC-3", "quantity", "temperature", "offset", "9")));
    }

    private void rigIsFoundBad(int day) {
        tell(
                day,
                "05:31",
                "RIG-W1",
                "bad",
                "Reference wall reads 2.6 % too much current",
                "errors",
                List.of(Bodies.of("quantity", "current", "percent", "2.6")));
    }

    private void readRadiometer(int day) {
        tell(
                day,
                "05:20",
                "UVT-1",
                "good",
                "Radiometer reads the dose of the recipe within 4 %",
                "radiometer",
                Bodies.of("irradiance", "243.5", "band", "365 nm", "lampHours", String.valueOf(310 + 9 * day)));
    }

    private void tell(
            int day, String time, String equipment, String verdict, String evidence, String field, Object value) {
        metrology.tell(
                PlantTime.at(day, time),
                "verification",
                "equipment",
                equipment,
                "verdict",
                verdict,
                "evidence",
                evidence,
                field,
                value);
    }

    private void checkRigs(int day) {
        boolean skipped = day > RIG_FOUND_BAD - 5 && day < RIG_FOUND_BAD;
        if (day == RIG_FOUND_BAD) {
            rigIsFoundBad(day);
            tell(day, "05:58", "calibration", "RIG-W1", "good", "Reference cell cleaned and compared");
        } else if (!skipped) {
            tell(day, "05:31", "verification", "RIG-W1", "good", "Reference wall within 0.4 %");
        }
        tell(day, "05:36", "verification", "RIG-W2", "good", "Reference wall within 0.4 %");
        tell(day, "05:41", "verification", "RIG-M1", "good", "Reference module within 0.5 %");
    }

    private void tell(int day, String time, String kind, String equipment, String verdict, String evidence) {
        metrology.tell(PlantTime.at(day, time), kind, "equipment", equipment, "verdict", verdict, "evidence", evidence);
    }
}
