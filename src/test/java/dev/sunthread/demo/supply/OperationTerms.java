package dev.sunthread.demo.supply;

import dev.sunthread.demo.told.Bodies;
import dev.sunthread.demo.told.Table;
import java.util.List;
import java.util.Optional;
import tools.jackson.databind.node.ObjectNode;

/** Where and when operations of the line may be done, and what can hurt there. */
record OperationTerms(
        List<String> stations, List<String> cautions, Optional<Boolean> onlineOnly, List<ObjectNode> windows) {

    /** Operation, stations, cautions, whether it needs the server, and seconds at least and at most after another. */
    private static final String ALL = """
            bond   | BOND-1,BOND-2     | chemical,heat   | - | -
            sort   | SORT-1            | -               | - | -
            fasten | WALL-1,WALL-2     | -               | - | -
            solder | SOLDER-1,SOLDER-2 | heat,chemical   | - | -
            coat   | COAT-1            | chemical        | - | -
            optic  | OPTIC-1           | uv,chemical     | - | coat 1500 28800
            seal   | SEAL-1            | chemical        | y | -
            mirror | MIRROR-1          | chemical        | - | seal 1200 28800
            glass  | GLASS-1           | chemical        | - | mirror 1200 28800
            weld   | FRAME-1           | heat,uv,voltage | y | -
            pack   | PACK-1            | -               | y | -
            """;

    static OperationTerms of(String operation) {
        return Table.rows(ALL).stream()
                .filter(row -> row.get(0).equals(operation))
                .findFirst()
                .map(row -> new OperationTerms(
                        Table.members(row.get(1)),
                        Table.members(row.get(2)),
                        row.get(3).equals("y") ? Optional.of(true) : Optional.empty(),
                        Table.members(row.get(4)).stream()
                                .map(OperationTerms::window)
                                .toList()))
                .orElseThrow();
    }

    private static ObjectNode window(String written) {
        String[] parts = written.split(" ");
        return Bodies.of("after", parts[0], "atLeast", Integer.valueOf(parts[1]), "atMost", Integer.valueOf(parts[2]));
    }
}
