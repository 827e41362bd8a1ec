package dev.sunthread.journal.raw;

import dev.sunthread.kernel.Refused;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;

/** The rows of a CSV file by its headers. A file that separates by semicolon writes decimals with a comma. */
final class Rows {

    /** One row with its number in the file. */
    record Row(long number, Map<String, String> cells) {}

    private final List<Row> all = new ArrayList<>();
    private final Mapping mapping;
    private final boolean comma;

    private Rows(Mapping mapping, boolean comma) {
        this.mapping = mapping;
        this.comma = comma;
    }

    /** @throws Refused if it is no CSV with a row of headers, or has no row */
    static Rows of(String text, Mapping mapping) {
        String content = text.startsWith("\uFEFF") ? text.substring(1) : text;
        char delimiter = delimiter(content.lines().findFirst().orElse(""));
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setDelimiter(delimiter)
                .setHeader()
                .setSkipHeaderRecord(true)
                .setTrim(true)
                .setIgnoreEmptyLines(true)
                .setCommentMarker('#')
                .get();
        Rows rows = new Rows(mapping, delimiter == ';');
        try (CSVParser parser = CSVParser.builder()
                .setReader(new StringReader(content))
                .setFormat(format)
                .get()) {
            mapping.columnsAreThere(parser.getHeaderNames());
            for (CSVRecord row : parser) {
                rows.all.add(new Row(row.getRecordNumber() + 1, row.toMap()));
            }
        } catch (IllegalArgumentException e) {
            throw noCsv("a column has no name, or the name of another");
        } catch (IOException | UncheckedIOException e) {
            throw noCsv("a quotation mark stands where none belongs, or one is not closed, behind row "
                    + (rows.all.size() + 1));
        }
        if (rows.all.isEmpty()) {
            throw new Refused("The file has no rows", "Give one row of headers and a row to each reading");
        }
        return rows;
    }

    private static char delimiter(String header) {
        return header.indexOf('\t') >= 0 ? '\t' : header.indexOf(';') >= 0 ? ';' : ',';
    }

    /** Rows together that say the same of a field, in the order of the file. */
    Map<String, List<Row>> grouped(String field) {
        Map<String, List<Row>> groups = new LinkedHashMap<>();
        all.forEach(row -> groups.computeIfAbsent(needed(row, field), key -> new ArrayList<>())
                .add(row));
        return groups;
    }

    @Nullable
    String told(Row row, String field) {
        return mapping.value(row.cells(), field);
    }

    /** @throws Refused if the row does not say it */
    String needed(Row row, String field) {
        String told = told(row, field);
        if (told == null) {
            throw new Refused(
                    "Row " + row.number() + " says no " + field,
                    "Map " + field + " to a column, or give it one value for all rows");
        }
        return told;
    }

    /** A number of the row as plain digits. @throws Refused if it is none */
    String number(Row row, String field) {
        String told = needed(row, field);
        try {
            return new BigDecimal(comma ? told.replace(',', '.') : told).toPlainString();
        } catch (NumberFormatException e) {
            throw new Refused(
                    "Row " + row.number() + ": " + field + " \"" + told + "\" is not a number",
                    "Leave out what was not measured; write numbers as in 12.5");
        }
    }

    @Nullable
    String numberIfTold(Row row, String field) {
        return told(row, field) == null ? null : number(row, field);
    }

    List<String> numbers(List<Row> rows, String field) {
        return rows.stream().map(row -> number(row, field)).toList();
    }

    /** Members of a text that separates them by commas or semicolons. */
    static Stream<String> members(@Nullable String text) {
        return text == null
                ? Stream.empty()
                : Stream.of(text.split("[,;]")).map(String::strip).filter(member -> !member.isEmpty());
    }

    private static Refused noCsv(String why) {
        return new Refused("The file is no CSV: " + why, "Save it as text with one row of headers");
    }
}
