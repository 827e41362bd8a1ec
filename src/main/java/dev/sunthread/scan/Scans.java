package dev.sunthread.scan;

import dev.sunthread.catalog.ItemLabels;
import dev.sunthread.scan.meaning.Meaning;
import dev.sunthread.scan.meaning.Reading;
import dev.sunthread.scan.meaning.Scanned;
import dev.sunthread.scan.parse.ItemPattern;
import dev.sunthread.scan.parse.ScanParser;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.Comparator;
import java.util.List;
import org.springframework.stereotype.Service;

/** Reads scanned texts with what is released: the patterns of serials, the numbers of items. */
@Service
public class Scans {

    private final ItemLabels labels;
    private final Clock clock;

    Scans(ItemLabels labels, Clock clock) {
        this.labels = labels;
        this.clock = clock;
    }

    /** All that a text may mean; of guesses those come first that name a released item. Never throws, never decides. */
    public Scanned read(String text) {
        List<ItemPattern> patterns = labels.patterns().stream()
                .map(pattern -> new ItemPattern(pattern.item(), pattern.pattern()))
                .toList();
        Scanned scanned =
                new ScanParser(patterns, OffsetDateTime.now(clock).getYear()).read(ScanChoiceKind.storable(text));
        return scanned.readings().size() == 1 ? scanned : knownFirst(scanned);
    }

    private Scanned knownFirst(Scanned scanned) {
        Comparator<Reading> knownFirst = Comparator.comparing(this::namesNoKnownItem);
        return new Scanned(
                scanned.text(), scanned.readings().stream().sorted(knownFirst).toList());
    }

    private boolean namesNoKnownItem(Reading reading) {
        return items(reading).isEmpty();
    }

    /** The released items that a reading names, by the plant's own numbers; several if others give one number to them. */
    public List<String> items(Reading reading) {
        return itemNumbers(reading).stream()
                .flatMap(number -> labels.called(number).stream())
                .distinct()
                .toList();
    }

    /** Every number by which a reading names an item: the plant's own, a GTIN, a supplier's. */
    public static List<String> itemNumbers(Reading reading) {
        return reading.elements().stream()
                .filter(element -> element.meaning() == Meaning.ITEM
                        || element.meaning() == Meaning.TRADE_ITEM
                        || element.meaning() == Meaning.SUPPLIER_ITEM)
                .map(element -> element.value())
                .toList();
    }
}
