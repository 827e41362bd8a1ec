package dev.sunthread.journal.raw;

import dev.sunthread.kernel.Refused;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Which column of a file holds which field. Written one a line: {@code volts: U [V]} names a column by its header,
 * {@code specification = WAL-IV} gives one value for all. A field without a line is the column of its own name.
 */
final class Mapping {

    private final Map<String, String> columns = new HashMap<>();
    private final Map<String, String> constants = new HashMap<>();

    /** @throws Refused if a line is neither of the two */
    static Mapping of(@Nullable String text) {
        Mapping mapping = new Mapping();
        String written = text == null ? "" : text;
        written.lines().map(String::strip).filter(line -> !line.isEmpty()).forEach(mapping::read);
        return mapping;
    }

    private void read(String line) {
        int equals = line.indexOf('=');
        int colon = line.indexOf(':');
        int at = equals > 0 && (colon < 0 || equals < colon) ? equals : colon;
        if (at <= 0 || at == line.length() - 1) {
            throw new Refused(
                    "\"" + line + "\" maps no field",
                    "Write \"volts: U [V]\" for a column, or \"specification = WAL-IV\" for one value");
        }
        (at == equals ? constants : columns)
                .put(line.substring(0, at).strip(), line.substring(at + 1).strip());
    }

    /** What a row says of a field, nothing if it says nothing. */
    @Nullable
    String value(Map<String, String> row, String field) {
        String constant = constants.get(field);
        String told = constant != null ? constant : row.get(columns.getOrDefault(field, field));
        return told == null || told.isBlank() ? null : told.strip();
    }

    /** @throws Refused if a mapped column is not in the file */
    void columnsAreThere(Iterable<String> headers) {
        Map<String, String> missing = new HashMap<>(columns);
        headers.forEach(header -> missing.values().remove(header));
        if (!missing.isEmpty()) {
            throw new Refused(
                    "The file has no column " + String.join(", ", missing.values()),
                    "Its columns are " + String.join(", ", headers) + "; map the fields to these");
        }
    }
}
