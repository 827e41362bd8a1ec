package dev.sunthread.scan.meaning;

import java.util.List;
import java.util.Optional;

/**
 * A scanned text with all it may mean, the likeliest first; at least one reading, which may be that nothing could be
 * read.
 *
 * @param text as scanned, without spaces and line ends around it
 */
public record Scanned(String text, List<Reading> readings) {

    public Scanned {
        readings = List.copyOf(readings);
    }

    /** The one meaning, if there is only one and nothing about it is in doubt. */
    public Optional<Reading> sure() {
        return readings.size() == 1 ? readings.stream().filter(Reading::isSure).findFirst() : Optional.empty();
    }

    /** Whether no reading took the whole text. */
    public boolean isUnread() {
        return readings.stream().noneMatch(Reading::isWhole);
    }

    /** Whether it is no more than a name, of which only the record tells what it names. */
    public boolean isName() {
        return readings.size() == 1 && readings.get(0).thing() == Thing.NAME;
    }
}
