package dev.sunthread.paper.web;

import dev.sunthread.access.PersonMarks;
import dev.sunthread.paper.RecordId;
import dev.sunthread.paper.entry.Filled;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * A record as a person typed it from paper.
 *
 * @param person who wrote it, as it stands there
 * @param startedAt date and time as written, without offset
 * @param endedAt date and time as written, without offset
 * @param offset the offset from UTC, such as {@code +01:00}
 * @param seconds to how many seconds the times are right
 * @param boxes what stands in each box, by the box's name
 * @param sure whether the person looked at the paper again and it says so
 */
public record RecordForm(
        String person,
        String startedAt,
        String endedAt,
        String offset,
        int seconds,
        Map<String, String> boxes,
        boolean sure) {

    private static final String BOX = "box.";
    private static final int TO_THE_MINUTE = 60;
    private static final int LONGEST = 1000;

    /** An empty record, at the offset of the plant. */
    static RecordForm empty(ZoneOffset here) {
        return new RecordForm("", "", "", PrintedForm.offset(here), TO_THE_MINUTE, Map.of(), false);
    }

    /** What was sent, whatever it is. */
    static RecordForm sent(Map<String, String> fields) {
        Map<String, String> boxes = new TreeMap<>();
        fields.forEach((name, text) -> {
            String said = text.strip();
            if (name.startsWith(BOX) && !said.isEmpty()) {
                boxes.put(name.substring(BOX.length()), said.substring(0, Math.min(said.length(), LONGEST)));
            }
        });
        Function<String, String> text = name -> fields.getOrDefault(name, "").strip();
        return new RecordForm(
                text.apply("person"),
                text.apply("startedAt"),
                text.apply("endedAt"),
                text.apply("offset"),
                text.apply("seconds").equals("1") ? 1 : TO_THE_MINUTE,
                boxes,
                fields.containsKey("sure"));
    }

    Filled filled(RecordId id, PersonMarks marks) {
        return new Filled(
                id,
                marks.of(person).orElse(Filled.UNREADABLE),
                boxes,
                read(startedAt, LocalDateTime::parse),
                read(endedAt, LocalDateTime::parse),
                read(offset, ZoneOffset::of),
                seconds);
    }

    private static <T> @Nullable T read(String text, Function<String, T> parse) {
        try {
            return parse.apply(text);
        } catch (DateTimeException e) {
            return null;
        }
    }
}
