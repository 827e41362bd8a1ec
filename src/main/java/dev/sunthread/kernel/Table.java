package dev.sunthread.kernel;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * A whole list as columns and rows, to be written as a file. Rows are read one by one when it is written, not before, so
 * that a page may offer it for any number of them. A unit stands in the heading of its column.
 *
 * @param name in small letters; names the file
 */
public record Table<R>(String name, List<Column<R>> columns, Source<R> source) {

    /** Where the rows come from. */
    @FunctionalInterface
    public interface Source<R> {
        /** Gives every row, in the order of the list. */
        void each(Consumer<R> row);
    }

    /** What stands in a column of a row: text, a number, a time, a word of a list, or several of them. */
    @FunctionalInterface
    public interface Value<R> {
        @Nullable
        Object of(R row);
    }

    /** A column with its heading: the key of a message, or words that are the same in every language. */
    public record Column<R>(String heading, Value<R> value) {}

    /** A table whose rows are read one by one. */
    @SafeVarargs
    public static <R> Table<R> of(String name, Source<R> source, Column<R>... columns) {
        return new Table<>(name, List.copyOf(Arrays.asList(columns)), source);
    }

    /** A table of a list that is read when the table is written. */
    @SafeVarargs
    public static <R> Table<R> listed(String name, Supplier<List<R>> rows, Column<R>... columns) {
        return of(name, row -> rows.get().forEach(row), columns);
    }

    public static <R> Column<R> column(String heading, Value<R> value) {
        return new Column<>(heading, value);
    }

    public List<String> headings() {
        return columns.stream().map(Column::heading).toList();
    }

    /** The same with other words in its headings. */
    public Table<R> headed(UnaryOperator<String> words) {
        return new Table<>(
                name,
                columns.stream()
                        .map(column -> column(words.apply(column.heading()), column.value()))
                        .toList(),
                source);
    }

    /** Gives every row as its cells. */
    public void rows(Consumer<List<@Nullable Object>> each) {
        source.each(row -> each.accept(cells(row)));
    }

    private List<@Nullable Object> cells(R row) {
        List<@Nullable Object> cells = new ArrayList<>(columns.size());
        columns.forEach(column -> cells.add(column.value().of(row)));
        return cells;
    }
}
