package dev.sunthread.station.label;

import dev.sunthread.catalog.ItemLabels;
import dev.sunthread.kernel.SerialPattern;
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
import org.springframework.stereotype.Service;

/** Finds what a scanned text names: all that it may name, so that a person chooses where that is several things. */
@Service
public class ScannedLabels {

    /** Stands before the operation that is to be done again. */
    public static final String AGAIN = "." + Command.AGAIN.word() + " ";

    private final Scans scans;
    private final ItemLabels items;
    private final RecordedLabels recorded;

    ScannedLabels(Scans scans, ItemLabels items, RecordedLabels recorded) {
        this.scans = scans;
        this.items = items;
        this.recorded = recorded;
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
                found.addAll(recorded.called(typed, station));
            }
        });
        return found.isEmpty() ? List.of(unrecorded(typed)) : narrowed(List.copyOf(found));
    }

    /** What the serials of an item look like, by each of its revisions that says so. */
    public List<SerialPattern> patternsOf(String item) {
        return items.patterns().stream()
                .filter(pattern -> pattern.item().equals(item))
                .map(ItemLabels.Pattern::pattern)
                .toList();
    }

    /** A label that is understood says what it is of, also if nothing recorded is called so. */
    private Label unrecorded(String typed) {
        return scans.read(typed).readings().stream()
                .filter(reading -> reading.isWhole() && reading.thing() != Thing.NAME)
                .findFirst()
                .<Label>map(reading -> new Label.Unrecorded(reading.thing(), called(reading), typed))
                .orElse(new Label.Unknown(typed));
    }

    private static String called(Reading reading) {
        return reading.elements().stream()
                .filter(element -> reading.thing().isSaidBy(element.meaning()))
                .findFirst()
                .map(element -> element.value())
                .orElse(reading.elements().get(0).value());
    }

    // what is recorded goes before what only could be a new serial
    private static List<Label> narrowed(List<Label> found) {
        List<Label> known = found.stream()
                .filter(label -> !(label instanceof Label.OfUnit unit && unit.isNew()))
                .toList();
        return known.isEmpty() ? found : known;
    }

    private List<Label> named(Reading reading, String station) {
        List<Label> found = own(reading, station);
        return found.isEmpty() && reading.value(Meaning.SUPPLIER_LOT).isPresent() ? supplied(reading) : found;
    }

    /** The lots that came under a supplier's lot; of the items that the label names, if it names any. */
    private List<Label> supplied(Reading reading) {
        List<Label> lots =
                recorded.suppliedLots(reading.value(Meaning.SUPPLIER_LOT).orElseThrow());
        List<String> named = Scans.itemNumbers(reading);
        List<String> items = scans.items(reading);
        return lots.stream()
                .filter(lot -> named.isEmpty() || lot instanceof Label.OfMaterial of && items.contains(of.item()))
                .toList();
    }

    /** What it names by a number of this plant. */
    private List<Label> own(Reading reading, String station) {
        return switch (reading.thing()) {
            case COMMAND ->
                reading.value(Meaning.COMMAND).flatMap(Command::of).stream()
                        .<Label>map(Label.OfCommand::new)
                        .toList();
            case UNIT -> units(reading);
            case LOT -> recorded.material(reading.value(Meaning.LOT).orElseThrow(), true, false);
            case CONTAINER -> recorded.material(reading.value(Meaning.CONTAINER).orElseThrow(), false, true);
            case CARRIER ->
                List.of(new Label.OfCarrier(reading.value(Meaning.CARRIER).orElseThrow()));
            case POSITION ->
                recorded.positions(
                        reading.value(Meaning.STATION).orElse(station),
                        reading.value(Meaning.POSITION).orElseThrow());
            case NAME -> recorded.called(reading.value(Meaning.NAME).orElseThrow(), station);
            default -> List.of();
        };
    }

    private List<Label> units(Reading reading) {
        String serial = reading.value(Meaning.SERIAL).orElseThrow();
        List<String> numbers = Scans.itemNumbers(reading).stream()
                .flatMap(number -> items.called(number).stream())
                .filter(recorded::isTrackedBySerial)
                .distinct()
                .toList();
        if (Scans.itemNumbers(reading).isEmpty()) {
            return recorded.units(serial, null);
        }
        String issuer = reading.value(Meaning.SUPPLIER).orElse(null);
        return numbers.stream()
                .flatMap(number -> {
                    List<Label> known = recorded.units(serial, number);
                    return known.isEmpty()
                            ? Stream.of(new Label.OfUnit(new UnitName(number, serial, issuer), true))
                            : known.stream();
                })
                .toList();
    }
}
