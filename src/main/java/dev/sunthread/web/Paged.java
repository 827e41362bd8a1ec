package dev.sunthread.web;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One page of a longer list.
 *
 * @param total how many rows the list has in all
 * @param page from 1
 */
public record Paged<R>(List<R> rows, long total, int page, int size) {

    /** Reads a page of a list that can be read in parts. */
    @FunctionalInterface
    public interface Part<R> {
        List<R> read(long offset, int most);
    }

    /** The page that an address asks for; the first if it asks for none, the last there is if it asks for one behind. */
    public static <R> Paged<R> of(@Nullable Integer asked, int size, long total, Part<R> part) {
        long last = Math.max(1, (total + size - 1) / size);
        int page = (int) Math.max(1, Math.min(asked == null ? 1 : asked, last));
        return new Paged<>(part.read((long) (page - 1) * size, size), total, page, size);
    }

    /** A page of a list that is read whole. */
    public static <R> Paged<R> of(@Nullable Integer asked, int size, List<R> all) {
        return of(
                asked,
                size,
                all.size(),
                (offset, most) -> all.stream().skip(offset).limit(most).toList());
    }

    /** The number of the first row shown, from 1; nought if none is. */
    public long first() {
        return rows.isEmpty() ? 0 : (long) (page - 1) * size + 1;
    }

    public long last() {
        return (long) (page - 1) * size + rows.size();
    }

    public @Nullable Integer previous() {
        return page == 1 ? null : page - 1;
    }

    public @Nullable Integer next() {
        return last() >= total ? null : page + 1;
    }

    public boolean isEmpty() {
        return rows.isEmpty();
    }
}
