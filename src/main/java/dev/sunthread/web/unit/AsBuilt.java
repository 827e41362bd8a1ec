package dev.sunthread.web.unit;

import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A unit as it was built at one time, or with all that ever was in it.
 *
 * @param view {@code now}, {@code ever}, or the number of a shipment
 * @param at the moment it shows; absent for ever
 * @param parts what is in each position, positions without a record among them
 * @param gaps how many positions have no record
 */
public record AsBuilt(String view, @Nullable OffsetDateTime at, List<Inside> parts, long gaps) {

    static final String NOW = "now";
    static final String EVER = "ever";
}
