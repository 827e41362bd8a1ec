package dev.sunthread.genealogy;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;

/** What is believed of the things said so far: without what was voided, and with corrections in its place. */
final class FactsByHand {

    private final List<Said> believed = new ArrayList<>();
    private final Map<String, Said> meant = new HashMap<>();
    private final Map<String, Long> entries = new HashMap<>();
    private final List<Said> stations;

    FactsByHand(List<Said> said) {
        Set<String> takenBack = new HashSet<>();
        for (Said one : said) {
            entries.put(one.id(), (long) entries.size() + 1);
            meant.put(one.id(), meant(one));
            String target = one.target();
            if (target != null) {
                takenBack.add(target);
            }
        }
        said.stream()
                .filter(one -> !takenBack.contains(one.id()) && !one.kind().equals("void"))
                .forEach(one -> believed.add(Objects.requireNonNull(meant.get(one.id()))));
        stations = of("station").toList();
    }

    Stream<Said> of(String kind) {
        return believed.stream().filter(one -> one.kind().equals(kind));
    }

    long entry(Said one) {
        return Objects.requireNonNull(entries.get(one.id()));
    }

    Said meantBy(Said one) {
        return Objects.requireNonNull(meant.get(one.id()));
    }

    /** A correction as the happening it tells anew, at the time it states or else at that of what it corrects. */
    private Said meant(Said one) {
        if (!one.kind().equals("correction")) {
            return one;
        }
        Said original = Objects.requireNonNull(meant.get(one.text("entry")));
        var stated = one.momentOrNull("occurredAt");
        return new Said(one.id(), original.kind(), stated == null ? original.at() : stated, one.map("body"));
    }

    /** The uncertainty of a station's clock at an instant. */
    long uncertainty(String station, long instant) {
        Said inForce = stations.stream()
                .filter(revision -> revision.text("station").equals(station))
                .reduce((one, other) -> isBetter(other, one, instant) ? other : one)
                .orElseThrow();
        return Long.parseLong(inForce.text("clockUncertainty")) * 1_000_000;
    }

    // the last one by then, and before the first one that one
    private static boolean isBetter(Said revision, Said than, long instant) {
        boolean isByThen = revision.instant() <= instant;
        boolean thanIsByThen = than.instant() <= instant;
        if (isByThen != thanIsByThen) {
            return isByThen;
        }
        return isByThen ? revision.instant() > than.instant() : revision.instant() < than.instant();
    }
}
