package dev.sunthread.ledger;

/**
 * The condition that every reading of history carries: the row's entry was sealed at the cut-off and nothing sealed by
 * then withdrew it. The cut-off is the named parameter {@code cutoff}.
 */
public final class Known {

    private Known() {}

    /** A condition on the column that holds the row's entry, with its table, such as {@code u.entry}. */
    public static String at(String entryColumn) {
        if (!entryColumn.contains(".")) {
            // a bare name would mean the column of the condition's own tables
            throw new IllegalArgumentException(entryColumn + " names no table");
        }
        // written as EXISTS, the planner may join them, and then reads the whole ledger up to the cut-off for a few
        // rows
        return """
                (coalesce((SELECT kp.position FROM ledger.position kp WHERE kp.entry = %1$s) <= :cutoff, false)
                 AND NOT coalesce((SELECT min(kwp.position) FROM ledger.withdrawal kw
                                   JOIN ledger.position kwp ON kwp.entry = kw.entry WHERE kw.target = %1$s) <= :cutoff, false))
                """.formatted(entryColumn);
    }

    /**
     * A condition on a table of things that are known from when they are first named, by its alias: whether an entry
     * sealed at the cut-off named the thing, believed or not.
     */
    public static String named(String thing) {
        return """
                (%1$s.named_by IS NULL OR coalesce((SELECT kn.position FROM ledger.position kn
                                                    WHERE kn.entry = %1$s.named_by) <= :cutoff, false))
                """.formatted(thing);
    }

    /** A condition for state: the row's entry is not withdrawn, sealed or not. */
    public static String now(String entryColumn) {
        return "(NOT EXISTS (SELECT FROM ledger.withdrawal kw WHERE kw.target = %s))".formatted(entryColumn);
    }
}
