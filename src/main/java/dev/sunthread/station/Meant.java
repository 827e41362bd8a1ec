package dev.sunthread.station;

import dev.sunthread.scan.ScanChoice;
import dev.sunthread.station.label.Label;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a scan may mean to the person who scanned it.
 *
 * @param labels all that it may name
 * @param chosen what the person said that the scan before means, if this one says so
 * @param question what the person has to say first; absent if nothing is in doubt
 */
record Meant(
        List<Label> labels,
        @Nullable ScanChoice chosen,
        @Nullable Verdict question) {

    Label label() {
        return labels.get(0);
    }
}
