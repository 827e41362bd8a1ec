package dev.sunthread.journal;

import dev.sunthread.kernel.Refused;
import java.io.Serializable;

/**
 * Why an import did not come to the end of its file. What it took before is recorded, and is known before when the file is
 * sent again.
 *
 * @param line the last line that was taken
 * @param reason what is wrong with the file, or what went wrong
 * @param remedy what to do next
 * @param canGoOn whether it goes on if it is asked to take in whatever can't be read
 */
public record ImportStop(int line, String reason, String remedy, boolean canGoOn) implements Serializable {

    static ImportStop of(int line, Refused why) {
        return new ImportStop(line, why.reason(), why.remedy(), false);
    }

    static ImportStop askingToGoOn(int line, Refused why) {
        return new ImportStop(line, why.reason(), why.remedy(), true);
    }
}
