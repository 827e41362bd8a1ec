package dev.sunthread.genealogy.history;

/**
 * Parts of statements that look at the whole plant and ask what is surely known and never contradicted. They err on
 * one side only: what was ever withdrawn, or is not sealed at the cut-off, or may not be, counts as not known.
 */
final class SurelyKnown {

    private SurelyKnown() {}

    /** Entries from this number on may not be known at the cut-off, or be taken back by a kept line; all before it are. */
    static final String LINE = """
            line AS MATERIALIZED (
              SELECT coalesce(least(
                (SELECT min(entry) FROM ledger.position WHERE position > :cutoff),
                (SELECT min(entry) FROM ledger.unsealed),
                cast(:doubtedFrom AS bigint)), 9223372036854775807) AS first_unknown)
            """;

    /** Installations that are known and that nothing contradicts, so that what was put in is there since; to be narrowed. */
    static final String LASTING = """
            SELECT p.parent, p.position, i.installed_at AS since, i.child_unit AS child
            FROM production.parent_position p JOIN production.installation i ON i.parent_position = p.id CROSS JOIN line
            LEFT JOIN ledger.withdrawal w ON w.target = i.entry
            WHERE %s
              AND NOT EXISTS (SELECT FROM unnest(:places::bigint[]) d(place) WHERE d.place = p.id)
              AND NOT EXISTS (SELECT FROM unnest(:parents::bigint[]) d(parent) WHERE d.parent = p.parent)
              AND NOT EXISTS (SELECT FROM unnest(:children::bigint[]) d(child) WHERE d.child = i.child_unit)
            """.formatted(at("i.entry"));

    /** Whether the entry is known; {@code w} is what withdrew it, and {@code line} is joined. */
    static String at(String entry) {
        return "(%s < line.first_unknown AND w.entry IS NULL)".formatted(entry);
    }
}
