package dev.sunthread.web.receipt;

import dev.sunthread.scan.meaning.Reading;
import dev.sunthread.scan.meaning.Scanned;
import dev.sunthread.scan.parse.Separators;
import java.util.List;
import java.util.Optional;

/**
 * A label of a delivery as scanned.
 *
 * @param taken the reading that the person took, or -1
 */
public record DeliveryLabel(Scanned scanned, int taken) {

    /** The reading that counts: the one that is sure, or the one that the person took. */
    public Optional<Reading> reading() {
        List<Reading> readings = scanned.readings();
        return taken >= 0 && taken < readings.size() ? Optional.of(readings.get(taken)) : scanned.sure();
    }

    /** Whether a person has to say which reading it is. */
    public boolean isOpen() {
        return reading().isEmpty() && !scanned.isUnread();
    }

    /** Whether a person took a reading that was not the only one, or in doubt. */
    boolean isChosen() {
        return taken >= 0 && scanned.sure().isEmpty() && reading().isPresent();
    }

    public String shown() {
        return Separators.toPictures(scanned.text());
    }
}
