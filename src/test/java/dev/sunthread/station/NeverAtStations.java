package dev.sunthread.station;

import java.util.Map;
import java.util.TreeMap;

/** The rules that nothing scanned at a station can break, each with the reason. */
final class NeverAtStations {

    private static final String OFFERED =
            "a station offers only operations of the route in force that may be done there";
    private static final String LOTS = "receiving, making and ending of lots are not scanned";
    private static final String TESTS = "rigs tell test runs; none is scanned";
    private static final String PAPER = "printed records are entered by a form";
    private static final String NOTED = "is noted and refuses nothing";
    private static final String LOADED = "an operation at a station draws from what is recorded there as loaded";

    private NeverAtStations() {}

    static Map<String, String> rules() {
        Map<String, String> rules = new TreeMap<>();
        rules.put(
                "what-is-decided-on-is-known",
                "a pass signed at a station is for what the refused scan named, which is known");
        for (String rule : new String[] {"finding-is-settled-once", "line-is-settled-once", "hold-is-released-once"}) {
            rules.put(rule, "findings, lines and holds are settled and released at a desk");
        }
        rules.put("operation-is-on-the-route", OFFERED);
        rules.put("station-may-do-the-operation", OFFERED);
        for (String rule : new String[] {
            "process-value-lies-within-its-limits",
            "cure-keeps-its-recipe",
            "cures-of-a-unit-keep-the-recipe-together",
            "told-verdict-is-that-of-the-raw-data",
            "cures-stand-after-a-check",
            "acceptances-stand-after-a-check",
            "readings-lie-within-their-run",
            "happening-is-not-in-the-future"
        }) {
            rules.put(rule, NOTED);
        }
        for (String rule : new String[] {
            "lot-is-received-once",
            "lot-is-made-once",
            "lot-is-not-made-of-itself",
            "lots-that-are-merged-are-of-one-item",
            "lot-is-of-one-item",
            "lot-ends-once",
            "quantity-is-in-the-unit-of-the-lot",
            "certificate-is-attached"
        }) {
            rules.put(rule, LOTS);
        }
        for (String rule : new String[] {
            "entered-record-is-not-void",
            "lost-record-may-hide-a-happening",
            "paper-times-are-as-exact-as-the-clock",
            "record-id-is-given-out-once",
            "record-is-of-a-known-sheet",
            "record-is-written-after-printing",
            "void-record-is-not-entered",
            "writer-of-a-record-is-known"
        }) {
            rules.put(rule, PAPER);
        }
        rules.put(
                "told-times-lie-within-what-is-proven",
                "the server says it itself of scans that a page kept: DeviceClockTests");
        rules.put("typed-label-is-confirmed-by-another", "two persons type it on a page of its own: DamagedLabelTests");
        rules.put("test-run-is-recorded-once", TESTS);
        rules.put("no-unit-is-tested-until-it-passes", TESTS);
        rules.put("lot-is-of-the-item-taken-in", "the item is the one that the lot's own receipt tells");
        rules.put("scanned-lot-is-the-one-loaded", LOADED);
        rules.put("container-holds-the-lot", "the lot is the one that the filling of the scanned container tells");
        rules.put("position-is-discharged-before-the-next-charge", "what was loaded comes off with the next");
        rules.put("serial-is-issued-once", "labels are reserved at a desk");
        rules.put(
                "serial-is-given-once",
                "a serial that has a birth is a known unit; of two at once see StationRaceTests");
        rules.put("unit-is-scrapped-once", "scrapping is not scanned");
        rules.put("position-holds-one-thing", "only empty positions are asked for");
        rules.put("only-what-is-inside-is-taken-out", "removals are not scanned");
        rules.put("carrier-position-holds-one-thing", "a unit goes to the first free position");
        rules.put("only-released-rules-are-passed", "a pass is asked for only where the list in force allows it");
        return rules;
    }
}
