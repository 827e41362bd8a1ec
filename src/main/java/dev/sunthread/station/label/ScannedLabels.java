package dev.sunthread.station.label;

import dev.sunthread.catalog.ItemLabels;
import dev.sunthread.ledger.Known;
import dev.sunthread.production.UnitName;
import dev.sunthread.scan.Scans;
import dev.sunthread.scan.meaning.Meaning;
import dev.sunthread.scan.meaning.Reading;
import dev.sunthread.scan.meaning.Syntax;
import dev.sunthread.scan.meaning.Thing;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Finds what a scanned text names: all that it may name, so that a person chooses where that is several things. */
@Repository
public class ScannedLabels {

    /** Stands before the operation that is to be done again. */
    public static final String AGAIN = "." + Command.AGAIN.word() + " ";

    private static final String UNITS = """
            SELECT i.number, u.serial, u.issuer,
              NOT EXISTS (SELECT FROM production.birth b WHERE b.unit = u.id AND %s) AS is_new
            FROM production.unit u JOIN catalog.item i ON i.id = u.item
            WHERE u.serial = ANY (:serials) AND (:item::text IS NULL OR i.number = :item)
            ORDER BY i.number, u.issuer
            """.formatted(Known.now("b.entry"));

    private static final String MATERIAL = """
            SELECT l.number, NULL AS label, %1$s FROM materials.lot l WHERE l.number = :name AND :lots
            UNION ALL
            SELECT DISTINCT l.number, c.label, %1$s FROM materials.container c
            JOIN materials.container_filling f ON f.container = c.id AND %2$s JOIN materials.lot l ON l.id = f.lot
            WHERE c.label = :name AND :containers
            """.formatted("""
                    (SELECT CASE WHEN count(DISTINCT o.item) = 1 THEN min(i.number) END
                     FROM materials.lot_origin o JOIN catalog.item i ON i.id = o.item WHERE o.lot = l.id)
                    """, Known.now("f.entry"));

    private final Scans scans;
    private final ItemLabels items;
    private final JdbcClient jdbc;

    ScannedLabels(Scans scans, ItemLabels items, JdbcClient jdbc) {
        this.scans = scans;
        this.items = items;
        this.jdbc = jdbc;
    }

    /** All that a text scanned at a station may name; one that is unknown if nothing is. */
    public List<Label> read(String text, String station) {
        String typed = text.strip();
        if (typed.startsWith(AGAIN)) {
            return List.of(new Label.OfOperation(typed.substring(AGAIN.length()).strip()));
        }
        if (typed.startsWith(".")) {
            return Command.of(typed.substring(1))
                    .<List<Label>>map(command -> List.of(new Label.OfCommand(command)))
                    .orElse(List.of(new Label.Unknown(typed)));
        }
        Set<Label> found = new LinkedHashSet<>();
        scans.read(text).readings().forEach(reading -> {
            found.addAll(named(reading, station));
            // a serial by its pattern may be the name of something else as well
            if (reading.syntax() == Syntax.PLAIN && reading.thing() != Thing.NAME) {
                found.addAll(ofName(typed, station));
            }
        });
        return found.isEmpty() ? List.of(new Label.Unknown(typed)) : narrowed(List.copyOf(found));
    }

    // what is recorded goes before what only could be a new serial
    private static List<Label> narrowed(List<Label> found) {
        List<Label> recorded = found.stream()
                .filter(label -> !(label instanceof Label.OfUnit unit && unit.isNew()))
                .toList();
        return recorded.isEmpty() ? found : recorded;
    }

    private List<Label> named(Reading reading, String station) {
        return switch (reading.thing()) {
            case COMMAND ->
                reading.value(Meaning.COMMAND).flatMap(Command::of).stream()
                        .<Label>map(Label.OfCommand::new)
                        .toList();
            case UNIT -> units(reading);
            case LOT -> material(reading.value(Meaning.LOT).orElseThrow(), true, false);
            case CONTAINER -> material(reading.value(Meaning.CONTAINER).orElseThrow(), false, true);
            case CARRIER ->
                List.of(new Label.OfCarrier(reading.value(Meaning.CARRIER).orElseThrow()));
            case POSITION ->
                List.of(new Label.OfPosition(
                        reading.value(Meaning.STATION).orElse(station),
                        reading.value(Meaning.POSITION).orElseThrow()));
            case NAME -> ofName(reading.value(Meaning.NAME).orElseThrow(), station);
            default -> List.of();
        };
    }

    private List<Label> units(Reading reading) {
        String serial = reading.value(Meaning.SERIAL).orElseThrow();
        List<String> numbers = Scans.itemNumbers(reading).stream()
                .flatMap(number -> items.called(number).stream())
                .distinct()
                .toList();
        if (numbers.isEmpty()) {
            return units(serial, null);
        }
        String issuer = reading.value(Meaning.SUPPLIER).orElse(null);
        return numbers.stream()
                .flatMap(number -> {
                    List<Label> recorded = units(serial, number);
                    return recorded.isEmpty()
                            ? Stream.of(new Label.OfUnit(new UnitName(number, serial, issuer), true))
                            : recorded.stream();
                })
                .toList();
    }

    private List<Label> units(String serial, @org.jspecify.annotations.Nullable String item) {
        return jdbc.sql(UNITS)
                .param("serials", new String[] {serial})
                .param("item", item)
                .query((row, number) -> (Label) new Label.OfUnit(
                        new UnitName(row.getString(1), row.getString(2), issuer(row.getString(3))), row.getBoolean(4)))
                .list();
    }

    private static @org.jspecify.annotations.Nullable String issuer(String issuer) {
        return issuer.equals(dev.sunthread.kernel.UnitId.THIS_PLANT) ? null : issuer;
    }

    private List<Label> material(String name, boolean lots, boolean containers) {
        return jdbc.sql(MATERIAL)
                .param("name", name)
                .param("lots", lots)
                .param("containers", containers)
                .query((row, number) ->
                        (Label) new Label.OfMaterial(row.getString(1), row.getString(2), row.getString(3)))
                .list();
    }

    List<Label> ofName(String name, String station) {
        Set<Label> found = new LinkedHashSet<>(units(name, null));
        found.addAll(material(name, true, true));
        jdbc.sql("""
                        SELECT 'carrier', code FROM production.carrier WHERE code = :name
                        UNION ALL SELECT 'equipment', code FROM catalog.equipment WHERE code = :name
                        UNION ALL SELECT 'position', p.code FROM catalog.position p JOIN catalog.station s ON s.id = p.station
                          WHERE p.code = :name AND s.code = :station
                        """).param("name", name).param("station", station).query(row -> {
            found.add(
                    switch (row.getString(1)) {
                        case "carrier" -> new Label.OfCarrier(row.getString(2));
                        case "equipment" -> new Label.OfEquipment(row.getString(2));
                        default -> new Label.OfPosition(station, row.getString(2));
                    });
        });
        return List.copyOf(found);
    }
}
