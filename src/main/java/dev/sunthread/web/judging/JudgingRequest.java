package dev.sunthread.web.judging;

import dev.sunthread.catalog.FoundError;
import dev.sunthread.catalog.judging.Question;
import dev.sunthread.kernel.Refused;
import dev.sunthread.ledger.body.Contradiction;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * What runs are to be judged again, as a form or a program says it.
 *
 * @param of cure or test
 * @param code the recipe or specification
 * @param from without offset in the plant's zone
 * @param quantity what the equipment reads wrong, with {@code amount}: in the sensor's unit, or in percent
 * @param always whether it read so all along
 */
record JudgingRequest(
        @Nullable String of,
        @Nullable String code,
        @Nullable String revision,
        @Nullable String equipment,
        @Nullable String from,
        @Nullable String to,
        @Nullable String sensor,
        @Nullable String quantity,
        @Nullable String amount,
        @Nullable Boolean always) {

    /** Cure or test; no kind of run if nothing is said. */
    String kind() {
        return of == null ? "" : of;
    }

    /** @throws Refused if nothing is named, or a time or number can't be read */
    Question question(ZoneId zone) {
        String named = given(code);
        if (named == null) {
            throw new Refused("No recipe or specification is named", "Give the one the runs were done under");
        }
        return new Question(named, given(revision), given(equipment), time(from, zone), time(to, zone), errors());
    }

    private List<FoundError> errors() {
        String wrong = given(quantity);
        String by = given(amount);
        if (wrong == null && by == null) {
            return List.of();
        }
        if (wrong == null || by == null) {
            throw new Refused("An error needs what reads wrong and by how much", "Give both, or neither");
        }
        try {
            FoundError.Quantity read = FoundError.Quantity.valueOf(wrong.toUpperCase(Locale.ROOT));
            boolean percent = read == FoundError.Quantity.CURRENT || read == FoundError.Quantity.VOLTAGE;
            BigDecimal number = new BigDecimal(by);
            return List.of(new FoundError(
                    given(sensor),
                    read,
                    percent ? null : number,
                    percent ? number : null,
                    Boolean.TRUE.equals(always) ? FoundError.Onset.ALWAYS : FoundError.Onset.UNKNOWN));
        } catch (IllegalArgumentException | Contradiction e) {
            throw new Refused(
                    "\"" + wrong + "\" by \"" + by + "\" is no error of equipment",
                    "Say temperature, irradiance, humidity, current or voltage, and a number such as 2.6");
        }
    }

    private static @Nullable OffsetDateTime time(@Nullable String text, ZoneId zone) {
        String told = given(text);
        if (told == null) {
            return null;
        }
        try {
            return told.matches(".*(Z|[+-]\\d\\d:\\d\\d)")
                    ? OffsetDateTime.parse(told)
                    : LocalDateTime.parse(told).atZone(zone).toOffsetDateTime();
        } catch (DateTimeException e) {
            throw new Refused("\"" + told + "\" is no time", "Write it as in 2026-03-02T10:15:04");
        }
    }

    private static @Nullable String given(@Nullable String text) {
        return text == null || text.isBlank() ? null : text.strip();
    }
}
