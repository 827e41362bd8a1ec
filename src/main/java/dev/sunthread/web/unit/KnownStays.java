package dev.sunthread.web.unit;

import dev.sunthread.ledger.Known;

/** Installations with their ends as history tells them at the parameter {@code cutoff}. */
public final class KnownStays {

    /** Every known stay; ends at the first known removal of that child from that parent behind it. */
    public static final String SQL = """
            SELECT i.entry, i.child_unit, i.child_lot, pp.parent, pp.position, i.installed_at, (
              SELECT min(r.removed_at) FROM production.removal r
              WHERE (r.child_unit = i.child_unit OR r.child_lot = i.child_lot) AND r.parent = pp.parent
                AND coalesce(r.parent_position, i.parent_position) = i.parent_position
                AND (r.removed_at > i.installed_at OR r.removed_at = i.installed_at AND r.entry > i.entry)
                AND %s) AS removed_at
            FROM production.installation i JOIN production.parent_position pp ON pp.id = i.parent_position
            WHERE %s
            """.formatted(Known.at("r.entry"), Known.at("i.entry"));

    private KnownStays() {}
}
