package dev.sunthread.web.search;

import dev.sunthread.access.Callers;
import dev.sunthread.kernel.Refused;
import dev.sunthread.scan.ScanChoice;
import dev.sunthread.scan.ScanChoices;
import dev.sunthread.scan.Scans;
import dev.sunthread.scan.meaning.Meaning;
import dev.sunthread.scan.meaning.Reading;
import dev.sunthread.scan.meaning.Scanned;
import dev.sunthread.scan.meaning.Thing;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.stereotype.Service;

/** Finds what a label names, whether its name was typed or its code was scanned. */
@Service
class ScanSearch {

    /** The word that hits use for what each kind of label names; a unit's is its level. */
    private static final Map<Thing, String> WORDS = Map.of(
            Thing.LOT, "lot",
            Thing.SUPPLIER_LOT, "supplier lot",
            Thing.CONTAINER, "container",
            Thing.CARRIER, "carrier",
            Thing.STATION, "station");

    private static final Map<Thing, Meaning> NAMES = Map.of(
            Thing.LOT, Meaning.LOT,
            Thing.SUPPLIER_LOT, Meaning.SUPPLIER_LOT,
            Thing.CONTAINER, Meaning.CONTAINER,
            Thing.CARRIER, Meaning.CARRIER,
            Thing.STATION, Meaning.STATION,
            Thing.UNIT, Meaning.SERIAL);

    private final Scans scans;
    private final ScanChoices choices;
    private final NamedThings things;
    private final Callers callers;

    ScanSearch(Scans scans, ScanChoices choices, NamedThings things, Callers callers) {
        this.callers = callers;
        this.scans = scans;
        this.choices = choices;
        this.things = things;
    }

    /** What is called exactly as the text or as the label that it is says; if nothing is, what is called nearly so. */
    SearchPage search(String typed) {
        Scanned scanned = scans.read(typed);
        String text = scanned.text();
        List<Hit> named = things.exactly(text);
        List<Hit> exact = named.isEmpty()
                ? scanned.readings().stream().flatMap(this::named).distinct().toList()
                : named;
        List<Hit> near = exact.isEmpty() ? near(text, scanned) : List.of();
        return new SearchPage(
                text,
                exact,
                near,
                scanned.isName() ? null : scanned,
                exact.isEmpty() ? choices.earlier(text) : List.of());
    }

    private Stream<Hit> named(Reading reading) {
        Thing thing = reading.thing();
        if (thing == Thing.POSITION) {
            return position(reading).stream();
        }
        if (thing == Thing.UNIT) {
            List<String> items = scans.items(reading);
            return exactly(reading, Meaning.SERIAL)
                    .filter(hit -> hit.taken().item() != null
                            && items.contains(hit.taken().item()));
        }
        Meaning name = NAMES.get(thing);
        return name == null
                ? Stream.of()
                : exactly(reading, name).filter(hit -> hit.what().equals(WORDS.get(thing)));
    }

    private Stream<Hit> exactly(Reading reading, Meaning name) {
        return reading.values(name).stream().flatMap(value -> things.exactly(value).stream());
    }

    private Optional<Hit> position(Reading reading) {
        String station = reading.value(Meaning.STATION).orElse("");
        return reading.value(Meaning.POSITION).flatMap(code -> things.position(station, code));
    }

    private List<Hit> near(String text, Scanned scanned) {
        return scanned.isName()
                ? things.near(text)
                : scanned.readings().stream()
                        .flatMap(reading -> Stream.ofNullable(NAMES.get(reading.thing()))
                                .flatMap(name -> reading.values(name).stream()))
                        .distinct()
                        .flatMap(name -> things.near(name).stream())
                        .distinct()
                        .toList();
    }

    /** Records that a text was taken for one of the things that are called nearly so, and gives that thing. */
    Hit choose(String typed, String address, String id) {
        SearchPage page = search(typed);
        Hit chosen = page.near().stream()
                .filter(hit -> hit.address().equals(address))
                .findFirst()
                .orElseThrow(() -> new Refused(
                        "What was chosen is not among what is called nearly so any more", "Search again and choose"));
        ScanChoice taken = chosen.taken();
        choices.chosen(
                id,
                callers.signedIn().mark(),
                "page",
                new ScanChoice(page.text(), taken.what(), taken.name(), taken.item(), taken.issuer()));
        return chosen;
    }
}
