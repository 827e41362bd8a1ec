package dev.sunthread.demo.supply;

import dev.sunthread.demo.floor.Floor;
import dev.sunthread.demo.told.Bodies;
import dev.sunthread.demo.told.PlantTime;
import dev.sunthread.demo.told.Table;
import dev.sunthread.demo.told.Teller;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tools.jackson.databind.node.ObjectNode;

/** Releases what the line is made of, in the week before the first receipts. */
public final class Definitions {

    private static final int DAY = -7;

    /** Four days in seconds: a cartridge opened on a Friday lasts through Monday. */
    private static final int LIFE = 345_600;

    private static final String ITEMS = """
            CELL-30 | lot    | pcs | Concentrator cell on carrier
            HSP-12  | lot    | pcs | Heat spreader
            TIM-5   | lot    | g   | Thermal adhesive
            FST-8   | lot    | pcs | Fastener
            SW-60   | lot    | g   | Solder wire
            FLX-2   | lot    | ml  | Flux
            CC-8    | lot    | ml  | Conformal coat
            SHD-3   | lot    | pcs | Shield
            SOE-14  | lot    | pcs | Secondary optic
            UVA-7   | lot    | ml  | UV adhesive
            CHS-4   | lot    | pcs | Chassis
            SIL-9   | lot    | g   | Silicone
            MIR-6   | lot    | pcs | Mirror strip
            EPR-1   | lot    | g   | Epoxy resin
            EPH-1   | lot    | g   | Epoxy hardener
            EPX-1   | lot    | g   | Mixed epoxy
            GLS-2   | lot    | pcs | Glass cover
            FRM-5   | lot    | pcs | Frame
            WLD-2   | lot    | g   | Welding wire
            RCV-100 | serial | pcs | Receiver
            WAL-200 | serial | pcs | Receiver wall
            MOD-300 | serial | pcs | Module
            PAN-400 | serial | pcs | Panel
            """;

    private static final String STATIONS = """
            BOND-1   | 30 | V1,V2       | Die bonder 1
            BOND-2   | 45 | V1,V2       | Die bonder 2
            OVEN     | 20 | -           | Oven room
            SORT-1   | 60 | -           | Sorting by eye
            WALL-1   | 30 | -           | Wall assembly 1
            WALL-2   | 30 | -           | Wall assembly 2
            SOLDER-1 | 30 | WIRE,FLUX   | Series soldering 1
            SOLDER-2 | 30 | WIRE,FLUX   | Series soldering 2
            COAT-1   | 60 | POT         | Conformal coating
            OPTIC-1  | 30 | UV          | Shields and optics
            LAMP-1   | 20 | -           | UV tunnel
            TEST-1   | 10 | -           | Electrical test
            SEAL-1   | 20 | GUN-A,GUN-B | Sealing into the chassis
            MIRROR-1 | 40 | MIX         | Mirror bonding
            GLASS-1  | 40 | GUN         | Closing with glass
            FRAME-1  | 60 | WIRE        | Panel welding
            PACK-1   | 60 | -           | Packing
            STORE-1  | 60 | -           | Store and incoming
            """;

    private static final String TAKES = """
            BOND-1   | V1    | TIM-5
            BOND-1   | V2    | TIM-5
            BOND-2   | V1    | TIM-5
            BOND-2   | V2    | TIM-5
            SOLDER-1 | WIRE  | SW-60
            SOLDER-1 | FLUX  | FLX-2
            SOLDER-2 | WIRE  | SW-60
            SOLDER-2 | FLUX  | FLX-2
            COAT-1   | POT   | CC-8
            OPTIC-1  | UV    | UVA-7
            SEAL-1   | GUN-A | SIL-9
            SEAL-1   | GUN-B | SIL-9
            MIRROR-1 | MIX   | EPX-1
            GLASS-1  | GUN   | SIL-9
            FRAME-1  | WIRE  | WLD-2
            """;

    private static final Map<String, String> SERIALS =
            Map.of("RCV-100", "RC-#####", "WAL-200", "RW-####", "MOD-300", "MD-####", "PAN-400", "PN-###");

    /** The Monday after the last working week, when the last run is over. */
    private static final int AFTERWARDS = PlantTime.WORKDAYS;

    private static final String EQUIPMENT = """
            OVEN-1 | OVEN   | Batch oven 1
            OVEN-2 | OVEN   | Batch oven 2
            UVT-1  | LAMP-1 | UV tunnel
            ROOM-1 | GLASS-1 | Dwell room 1
            ROOM-2 | GLASS-1 | Dwell room 2
            RIG-W1 | TEST-1 | Wall flash rig 1
            RIG-W2 | TEST-1 | Wall flash rig 2
            RIG-M1 | TEST-1 | Module sun simulator
            RIG-G1 | TEST-1 | Ground and insulation tester
            """;

    private static final String ROUTES = """
            RCV-100 | bond   | Bond cell             | CELL-30,HSP-12,TIM-5 | TIM-150  | -       | unit-alone
            RCV-100 | sort   | Sort by eye           | -                    | -        | -       | unit-alone
            WAL-200 | fasten | Fasten receivers      | RCV-100,FST-8        | -        | -       | all-inside
            WAL-200 | solder | Solder in series      | SW-60,FLX-2          | -        | -       | all-inside
            WAL-200 | coat   | Coat                  | CC-8                 | -        | -       | all-inside
            WAL-200 | optic  | Mount shields, optics | SHD-3,SOE-14,UVA-7   | UV-365   | WAL-IV  | all-inside
            MOD-300 | seal   | Seal into the chassis | WAL-200,CHS-4,SIL-9  | -        | -       | all-inside
            MOD-300 | mirror | Bond mirrors          | MIR-6,EPX-1          | -        | -       | all-inside
            MOD-300 | glass  | Close with glass      | GLS-2,SIL-9          | DWELL-24 | MOD-IV  | all-inside
            PAN-400 | weld   | Weld into the frame   | MOD-300,FRM-5,WLD-2  | -        | PAN-GND | all-inside
            PAN-400 | pack   | Pack                  | -                    | -        | -       | all-inside
            """;

    private static final String RECIPES = """
            TIM-150  | Bake thermal adhesive, one hour at 150 degrees Celsius
            UV-365   | Fix optics under ultraviolet light of 365 nm
            DWELL-24 | Let silicone and epoxy stand for a day
            """;

    private static final String SPECIFICATIONS = """
            WAL-IV  | Current and voltage of a wall under flash
            MOD-IV  | Current and voltage of a module under the sun simulator
            PAN-GND | Ground continuity and insulation of a panel
            """;

    private static final String FAULTS = """
            low-current | A cell gives too little current       | WAL-IV,MOD-IV
            soft-bond   | The thermal adhesive did not cure     | -
            open-ground | The frame is not connected throughout | PAN-GND
            """;

    /** What quality may let pass by signature. */
    private static final List<String> SOFT_RULES = List.of(
            "earlier-operations-are-done-before-the-next",
            "station-may-do-the-operation",
            "operation-begins-after-its-dwell",
            "operation-begins-within-its-window",
            "operator-is-qualified",
            "lot-is-not-expired",
            "container-is-within-its-open-life",
            "operation-is-done-once");

    private final Teller engineer;

    public Definitions(Floor floor) {
        engineer = floor.notes().teller("pe-01", "engineering");
    }

    public void tell() {
        tellAll(8, "item", Table.rows(ITEMS).stream().map(Definitions::item));
        tellAll(9, "station", Table.rows(STATIONS).stream().map(Definitions::station));
        tellAll(10, "equipment", Table.rows(EQUIPMENT).stream().map(Definitions::equipment));
        tellAll(11, "recipe", Table.rows(RECIPES).stream().map(row -> named("recipe", row)));
        tellAll(12, "specification", Table.rows(SPECIFICATIONS).stream().map(row -> named("specification", row)));
        tellAll(13, "fault", Table.rows(FAULTS).stream().map(Definitions::fault));
        tellAll(14, "structure", structures());
        tellAll(
                15,
                "route",
                Stream.of("RCV-100", "WAL-200", "MOD-300", "PAN-400").map(Definitions::route));
        tellAll(16, "soft-rules", Stream.of(Bodies.of("revision", "A", "rules", SOFT_RULES)));
    }

    /**
     * Releases, once the last working day is over, what scanning at stations goes by: what serials look like, and which
     * items each position takes.
     */
    public void tellWhatScansGoBy() {
        int minute = 0;
        for (List<String> row : Table.rows(ITEMS)) {
            if (SERIALS.containsKey(row.get(0))) {
                ObjectNode item = item(row).put("revision", "B").put("serialPattern", SERIALS.get(row.get(0)));
                engineer.tell(PlantTime.at(AFTERWARDS, "07:%02d".formatted(minute++)), "item", item);
            }
        }
        for (List<String> row : Table.rows(STATIONS)) {
            List<ObjectNode> takes = Table.rows(TAKES).stream()
                    .filter(one -> one.get(0).equals(row.get(0)))
                    .map(one -> Bodies.of("position", one.get(1), "items", Table.members(one.get(2))))
                    .toList();
            if (!takes.isEmpty()) {
                ObjectNode station = station(row).put("revision", "B");
                station.set("takes", Bodies.of("takes", takes).get("takes"));
                engineer.tell(PlantTime.at(AFTERWARDS, "08:%02d".formatted(minute++)), "station", station);
            }
        }
    }

    private void tellAll(int hour, String kind, Stream<ObjectNode> bodies) {
        int minute = 10;
        for (ObjectNode body : bodies.toList()) {
            engineer.tell(PlantTime.at(DAY, "%02d:%02d".formatted(hour, minute++)), kind, body);
        }
    }

    private static ObjectNode item(List<String> row) {
        boolean serial = row.get(1).equals("serial");
        String level = row.get(0).equals("WAL-200") ? "wall" : row.get(3).toLowerCase(Locale.ROOT);
        return Bodies.of(
                "item",
                row.get(0),
                "revision",
                "A",
                "name",
                row.get(3),
                "tracking",
                row.get(1),
                "level",
                serial ? Optional.of(level) : Optional.empty(),
                "unitOfMeasure",
                row.get(2),
                "openLife",
                row.get(0).equals("TIM-5") ? Optional.of(LIFE) : Optional.empty(),
                "outLife",
                row.get(0).equals("TIM-5") ? Optional.of(LIFE) : Optional.empty());
    }

    private static ObjectNode station(List<String> row) {
        return Bodies.of(
                "station",
                row.get(0),
                "revision",
                "A",
                "name",
                row.get(3),
                "clockUncertainty",
                row.get(1),
                "positions",
                Table.members(row.get(2)));
    }

    private static ObjectNode equipment(List<String> row) {
        return Bodies.of("equipment", row.get(0), "revision", "A", "name", row.get(2), "station", row.get(1));
    }

    private static ObjectNode named(String field, List<String> row) {
        return Bodies.of(field, row.get(0), "revision", "A", "name", row.get(1));
    }

    private static ObjectNode fault(List<String> row) {
        ObjectNode body = named("fault", row);
        body.set("tests", Bodies.of("tests", Table.members(row.get(2))).get("tests"));
        return body;
    }

    private static ObjectNode route(String item) {
        return Bodies.of(
                "item",
                item,
                "revision",
                "A",
                "operations",
                Table.rows(ROUTES).stream()
                        .filter(row -> row.get(0).equals(item))
                        .map(Definitions::operation)
                        .toList());
    }

    private static ObjectNode operation(List<String> row) {
        OperationTerms terms = OperationTerms.of(row.get(1));
        return Bodies.of(
                "operation",
                row.get(1),
                "name",
                row.get(2),
                "consumes",
                Table.members(row.get(3)),
                "cures",
                Table.members(row.get(4)),
                "tests",
                Table.members(row.get(5)),
                "reach",
                row.get(6),
                "stations",
                terms.stations(),
                "cautions",
                terms.cautions(),
                "onlineOnly",
                terms.onlineOnly(),
                "windows",
                terms.windows());
    }

    private static Stream<ObjectNode> structures() {
        return Stream.of(
                structure("WAL-200", places("R", 12, "RCV-100")),
                structure("MOD-300", Stream.of(place("WALL", "WAL-200"), place("GLASS", "GLS-2"))),
                structure("PAN-400", places("P", 16, "MOD-300")),
                structure("EPX-1", Stream.of(place("RESIN", "EPR-1"), place("HARDENER", "EPH-1"))));
    }

    private static ObjectNode structure(String item, Stream<ObjectNode> places) {
        return Bodies.of("item", item, "revision", "A", "positions", places.toList());
    }

    private static Stream<ObjectNode> places(String letter, int count, String item) {
        return IntStream.rangeClosed(1, count).mapToObj(i -> place(letter + i, item));
    }

    private static ObjectNode place(String position, String item) {
        return Bodies.of("position", position, "items", List.of(item));
    }
}
