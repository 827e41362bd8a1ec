package dev.sunthread.station;

import java.util.List;
import java.util.stream.IntStream;

/** The work on new modules of the demo plant, each from its twelve receivers to its glass, and on their panel. */
record DemoWork(Hands hands, List<Integer> modules) {

    static String receiver(int module, int place) {
        return "RC-%05d".formatted(90_000 + 20 * module + place);
    }

    static String wall(int module) {
        return "RW-%04d".formatted(9_000 + module);
    }

    static String module(int module) {
        return "MD-%04d".formatted(9_000 + module);
    }

    static List<String> receivers(int module) {
        return IntStream.rangeClosed(1, 12)
                .mapToObj(place -> receiver(module, place))
                .toList();
    }

    List<String> allReceivers() {
        return modules.stream().flatMap(module -> receivers(module).stream()).toList();
    }

    void bond() throws Exception {
        hands.at("BOND-1");
        hands.load("V1", "NEW-TIM-5");
        hands.load("V2", "NEW-TIM-5");
        several(" in hand together");
        hands.scan("NEW-CELL-30", "NEW-CELL-30 is used as CELL-30");
        hands.scan("NEW-HSP-12", "Bond cell is done on");
    }

    private void several(String says) throws Exception {
        hands.scan(".several", "Scan the units one by one");
        for (String receiver : allReceivers()) {
            hands.scan(receiver, receiver + " is with the others");
        }
        hands.scan(".done", says);
    }

    void sort() throws Exception {
        hands.at("SORT-1");
        several("Sort by eye is done on");
    }

    void fasten() throws Exception {
        hands.at("WALL-1");
        for (int module : modules) {
            hands.scan(wall(module), wall(module) + " is a new WAL-200");
            hands.scan("NEW-FST-8", "NEW-FST-8 is used as FST-8");
            for (String receiver : receivers(module).subList(0, 11)) {
                hands.scan(receiver, receiver + " is in R");
            }
            hands.scan(receiver(module, 12), "Fasten receivers is done on " + wall(module));
        }
    }

    void solderAndCoat() throws Exception {
        hands.at("SOLDER-1");
        hands.load("WIRE", "NEW-SW-60");
        hands.load("FLUX", "NEW-FLX-2");
        each("Solder in series is done on ");
        hands.at("COAT-1");
        hands.load("POT", "NEW-CC-8");
        each("Coat is done on ");
    }

    private void each(String says) throws Exception {
        for (int module : modules) {
            hands.scan(wall(module), says + wall(module));
        }
    }

    void optics() throws Exception {
        hands.at("OPTIC-1");
        hands.load("UV", "NEW-UVA-7");
        for (int module : modules) {
            hands.scan(wall(module), wall(module) + " is in hand for: Mount shields, optics");
            hands.scan("NEW-SHD-3", "NEW-SHD-3 is used as SHD-3");
            hands.scan("NEW-SOE-14", "Mount shields, optics is done on " + wall(module));
        }
    }

    void seal() throws Exception {
        hands.at("SEAL-1");
        hands.load("GUN-A", "NEW-SIL-9");
        hands.load("GUN-B", "NEW-SIL-9");
        for (int module : modules) {
            hands.scan(module(module), module(module) + " is a new MOD-300");
            hands.scan(wall(module), wall(module) + " is in WALL of " + module(module));
            hands.scan("NEW-CHS-4", "Seal into the chassis is done on " + module(module));
        }
    }

    void mirror() throws Exception {
        hands.at("MIRROR-1");
        hands.load("MIX", "NEW-EPX-1");
        for (int module : modules) {
            hands.scan(module(module), module(module) + " is in hand for: Bond mirrors");
            hands.scan("NEW-MIR-6", "Bond mirrors is done on " + module(module));
        }
    }

    void glass() throws Exception {
        hands.at("GLASS-1");
        hands.load("GUN", "NEW-SIL-9");
        for (int module : modules) {
            hands.scan(module(module), module(module) + " is in hand for: Close with glass");
            hands.scan("NEW-GLS-2", "Close with glass is done on " + module(module));
        }
    }

    /** Welds sixteen modules into a panel. */
    void weld(String panel, List<Integer> sixteen) throws Exception {
        hands.at("FRAME-1");
        hands.load("WIRE", "NEW-WLD-2");
        hands.scan(panel, panel + " is a new PAN-400");
        hands.scan("NEW-FRM-5", "NEW-FRM-5 is used as FRM-5");
        for (int module : sixteen.subList(0, 15)) {
            hands.scan(module(module), module(module) + " is in P");
        }
        hands.scan(module(sixteen.get(15)), "Weld into the frame is done on " + panel);
    }

    void packAndShip(String panel) throws Exception {
        hands.at("PACK-1");
        hands.scan(panel, "Pack is done on " + panel);
        hands.scan(".ship", "Who does it go to?");
        hands.scan("Thornfield Array", "Shipment to Thornfield Array");
        hands.scan(panel, panel + " goes; 1 in the shipment");
        hands.scan(".done", "to Thornfield Array is recorded; units: 1.");
    }
}
