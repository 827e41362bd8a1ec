package dev.sunthread.web.search;

import dev.sunthread.scan.ScanChoices;
import dev.sunthread.scan.meaning.Scanned;
import dev.sunthread.scan.parse.Separators;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a search found: things named exactly so, and things named nearly so, which a person has to choose among.
 *
 * @param text as typed or scanned
 * @param scanned what the text may mean, if it is more than a name
 * @param earlier what the same text was taken for before
 */
public record SearchPage(
        String text,
        List<Hit> exact,
        List<Hit> near,
        @Nullable Scanned scanned,
        List<ScanChoices.Earlier> earlier) {

    /** The text with pictures instead of separators, as a page can show it and send it back. */
    public String shown() {
        return Separators.toPictures(text);
    }

    /** Whether the text says something that a receipt can be filled from. */
    public boolean isDelivery() {
        return scanned != null
                && scanned.readings().stream()
                        .anyMatch(reading -> reading.elements().size() > 1);
    }
}
