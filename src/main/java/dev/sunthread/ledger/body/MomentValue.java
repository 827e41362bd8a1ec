package dev.sunthread.ledger.body;

import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.temporal.ChronoField;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/** A date and time with its offset from UTC, to the microsecond. */
record MomentValue() implements ValueShape {

    private static final Pattern WRITTEN = Pattern.compile(
            "20[0-9]{2}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}(\\.[0-9]{1,6})?(Z|[+-][0-9]{2}:[0-9]{2})");

    /** In seconds, and as far as clocks on earth are apart; the database takes no more than two hours beyond. */
    private static final int LARGEST_OFFSET = 14 * 3600;

    private static final DateTimeFormatter FORM = new DateTimeFormatterBuilder()
            .appendPattern("uuuu-MM-dd'T'HH:mm:ss")
            .appendFraction(ChronoField.MICRO_OF_SECOND, 0, 6, true)
            .appendOffsetId()
            .toFormatter();

    @Override
    public @Nullable Object read(JsonNode json, String path, List<FieldProblem> problems) {
        if (json.isString() && WRITTEN.matcher(json.stringValue()).matches()) {
            try {
                OffsetDateTime moment = OffsetDateTime.parse(json.stringValue());
                if (Math.abs(moment.getOffset().getTotalSeconds()) <= LARGEST_OFFSET) {
                    return moment;
                }
                problems.add(new FieldProblem(path, "has an offset of more than 14 hours", "Give " + expected()));
            } catch (DateTimeException e) {
                problems.add(new FieldProblem(path, "names a day or time that does not exist", "Give " + expected()));
            }
            return null;
        }
        problems.add(new FieldProblem(path, "is not " + expected(), "Give " + expected()));
        return null;
    }

    @Override
    public JsonNode write(Object value) {
        return JsonNodeFactory.instance.stringNode(FORM.format((OffsetDateTime) value));
    }

    @Override
    public String expected() {
        return "a date and time from 2000 to 2099 with its offset, such as \"2026-03-02T06:15:30.25+01:00\"";
    }
}
