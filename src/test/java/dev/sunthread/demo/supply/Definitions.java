package dev.sunthread.demo.supply;

import dev.sunthread.demo.told.Bodies;
import dev.sunthread.demo.told.Notebook;
import dev.sunthread.demo.told.PlantTime;
import dev.sunthread.demo.told.Table;
import dev.sunthread.demo.told.Teller;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tools.jackson.databind.node.ObjectNode;

/** Releases what the line is made of, on the day before the first receipts. */
public final class Definitions {

    private static final int DAY = 2;

    private static final String ITEMS = """
            CELL-30 | lot    | pcs | Concentrator cell on carrier
            HSP-12  | lot    | pcs | Heat spreader
            TIM-5   | lot    | g   | Thermal adhesive
            SW-60   | lot    | g   | Solder wire
            FLX-2   | lot    | ml  | Flux
            CC-8    | lot    | ml  | Conformal coat
            SHD-3   | lot    | pcs | Shield
            SOE-14  | lot    | pcs | Secondary optic
            UVA-7   | lot    | ml  | UV adhesive
            CHS-4   | lot    | pcs | Chassis
            SIL-9   | lot    | g   | Silicone
            MIR-6   | lot    | pcs | Mirror strip
            EPX-1   | lot    | g   | Epoxy
            GLS-2   | lot    | pcs | Glass cover
            FRM-5   | lot    | pcs | Frame
            RCV-100 | serial | pcs | Receiver
            WAL-200 | serial | pcs | Receiver wall
            MOD-300 | serial | pcs | Module
            PAN-400 | serial | pcs | Panel
            """;

    private static final String STATIONS = """
            BOND-1   | 30 | V1,V2       | Die bonder 1
            BOND-2   | 45 | V1,V2       | Die bonder 2
            SOLDER-1 | 30 | WIRE,FLUX   | Interconnect soldering
            COAT-1   | 60 | POT         | Conformal coating
            OPTIC-1  | 30 | UV          | Optic and shield mounting
            SEAL-1   | 20 | GUN-A,GUN-B | Wall assembly and sealing
            MIRROR-1 | 40 | EPOXY       | Mirror bonding
            GLASS-1  | 40 | GUN         | Module closing
            FRAME-1  | 60 | -           | Panel framing
            PACK-1   | 60 | -           | Packing
            """;

    private static final String ROUTES = """
            RCV-100 | bond   | Bond cell        | CELL-30,HSP-12,TIM-5
            RCV-100 | solder | Solder leads     | SW-60,FLX-2
            RCV-100 | coat   | Coat             | CC-8
            RCV-100 | optic  | Mount optic      | SOE-14,UVA-7,SHD-3
            WAL-200 | seal   | Seal wall        | SIL-9
            MOD-300 | mirror | Bond mirrors     | CHS-4,EPX-1
            MOD-300 | glass  | Close with glass | SIL-9
            PAN-400 | frame  | Frame            | FRM-5
            PAN-400 | pack   | Pack             | -
            """;

    private final Teller engineer;

    public Definitions(Notebook notes) {
        engineer = notes.teller("pe-01", "engineering");
    }

    public void tell() {
        tellAll(8, "item", Table.rows(ITEMS).stream().map(Definitions::item));
        tellAll(9, "station", Table.rows(STATIONS).stream().map(Definitions::station));
        tellAll(10, "structure", structures());
        tellAll(
                11,
                "route",
                Stream.of("RCV-100", "WAL-200", "MOD-300", "PAN-400").map(Definitions::route));
    }

    private void tellAll(int hour, String kind, Stream<ObjectNode> bodies) {
        int minute = 10;
        for (ObjectNode body : bodies.toList()) {
            engineer.tell(PlantTime.at(DAY, "%02d:%02d".formatted(hour, minute++)), kind, body);
        }
    }

    private static ObjectNode item(List<String> row) {
        String name = row.get(3);
        ObjectNode body = Bodies.of("item", row.get(0), "revision", "A", "name", name, "tracking", row.get(1));
        if (row.get(1).equals("serial")) {
            body.put("level", name.toLowerCase(Locale.ROOT));
        }
        return body.put("unitOfMeasure", row.get(2));
    }

    private static ObjectNode station(List<String> row) {
        ObjectNode body = Bodies.of("station", row.get(0), "revision", "A", "name", row.get(3));
        body.put("clockUncertainty", row.get(1));
        body.set("positions", Bodies.texts(Table.members(row.get(2))));
        return body;
    }

    private static ObjectNode route(String item) {
        ObjectNode body = Bodies.of("item", item, "revision", "A");
        body.set(
                "operations",
                Bodies.list(Table.rows(ROUTES).stream()
                        .filter(row -> row.get(0).equals(item))
                        .map(Definitions::operation)
                        .toList()));
        return body;
    }

    private static ObjectNode operation(List<String> row) {
        ObjectNode body = Bodies.of("operation", row.get(1), "name", row.get(2));
        body.set("consumes", Bodies.texts(Table.members(row.get(3))));
        return body;
    }

    private static Stream<ObjectNode> structures() {
        Stream<ObjectNode> rest = Stream.of(place("WALL", "WAL-200"), place("GLASS", "GLS-2"));
        return Stream.of(
                structure("WAL-200", places("R", 12, "RCV-100")),
                structure("MOD-300", Stream.concat(places("M", 4, "MIR-6"), rest)),
                structure("PAN-400", places("P", 4, "MOD-300")));
    }

    private static ObjectNode structure(String item, Stream<ObjectNode> places) {
        ObjectNode body = Bodies.of("item", item, "revision", "A");
        body.set("positions", Bodies.list(places.toList()));
        return body;
    }

    private static Stream<ObjectNode> places(String letter, int count, String item) {
        return IntStream.rangeClosed(1, count).mapToObj(i -> place(letter + i, item));
    }

    private static ObjectNode place(String position, String item) {
        ObjectNode body = Bodies.of("position", position);
        body.set("items", Bodies.texts(List.of(item)));
        return body;
    }
}
