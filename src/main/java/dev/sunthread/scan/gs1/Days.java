package dev.sunthread.scan.gs1;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Optional;

/** Days as GS1 writes them. */
public final class Days {

    private Days() {}

    /**
     * A day written {@code YYMMDD}; day 00 is the last of its month.
     *
     * @param year the current year: a year that would be 51 to 99 ahead is of the century before, one that would be 50 to
     *     99 behind is of the next (GS1 General Specifications, section 7.12)
     */
    public static Optional<LocalDate> ofSix(String digits, int year) {
        int given = Integer.parseInt(digits.substring(0, 2));
        int ahead = given - year % 100;
        int century = year / 100 * 100;
        if (ahead >= 51) {
            century -= 100;
        } else if (ahead <= -50) {
            century += 100;
        }
        return of(century + given, digits.substring(2));
    }

    /** A day written {@code YYYYMMDD}; day 00 is the last of its month. */
    public static Optional<LocalDate> ofEight(String digits) {
        return of(Integer.parseInt(digits.substring(0, 4)), digits.substring(4));
    }

    private static Optional<LocalDate> of(int year, String monthAndDay) {
        int month = Integer.parseInt(monthAndDay.substring(0, 2));
        int day = Integer.parseInt(monthAndDay.substring(2));
        try {
            YearMonth of = YearMonth.of(year, month);
            return Optional.of(day == 0 ? of.atEndOfMonth() : of.atDay(day));
        } catch (DateTimeException noSuchDay) {
            return Optional.empty();
        }
    }
}
