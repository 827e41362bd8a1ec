package dev.sunthread.access.web;

import dev.sunthread.access.StationCodes;
import dev.sunthread.access.Words;
import dev.sunthread.kernel.Refused;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;

/** The stations that a device or a token can stand at. */
@Component
class StationChoice {

    private final ObjectProvider<StationCodes> codes;
    private final Words words;

    StationChoice(ObjectProvider<StationCodes> codes, Words words) {
        this.codes = codes;
        this.words = words;
    }

    List<String> all() {
        return codes.orderedStream().flatMap(some -> some.all().stream()).toList();
    }

    /** @throws Refused if a station is named that does not exist */
    void exists(@Nullable String station) {
        if (station != null && !all().contains(station)) {
            throw words.refused("no-station", station);
        }
    }
}
