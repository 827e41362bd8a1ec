package dev.sunthread.catalog.judging;

import dev.sunthread.ledger.Known;

/**
 * Where runs of a module are kept and under what they were done.
 *
 * @param schema the module's schema
 * @param thing the definition they are done under: recipe or specification
 */
public record Runs(String schema, String thing) {

    /** Every cure run, under recipes. */
    public static final Runs CURES = new Runs("cure", "recipe");

    /** Every test run, under specifications. */
    public static final Runs TESTS = new Runs("electrical", "specification");

    /**
     * Runs {@code r} with the checks {@code k} that say something of each: the next one if it was bad, and for cures those
     * before and after at which a radiometer was read; 0 otherwise. A run lies since the last good check exactly if the
     * next one is bad.
     *
     * @param check the condition of knowledge on the check {@code c}
     */
    String withChecks(String check) {
        boolean tests = equals(TESTS);
        String sameTest = tests ? " AND coalesce(c.specification, r.specification) = r.specification" : "";
        return """
                %s.run_record r CROSS JOIN LATERAL (
                  SELECT coalesce((SELECT CASE WHEN c.verdict = 'BAD' THEN c.entry ELSE 0 END
                    FROM catalog.equipment_check c WHERE c.equipment = r.equipment AND c.checked_at > r.ended_at%s AND %s
                    ORDER BY c.checked_at, c.entry LIMIT 1), 0) AS checked,
                    %s AS lit_before, %s AS lit_after) k
                """.formatted(
                        schema,
                        sameTest,
                        check,
                        tests ? "0::bigint" : radiometer("<= r.started_at", "DESC", check),
                        tests ? "0::bigint" : radiometer(">= r.ended_at", "ASC", check));
    }

    private static String radiometer(String when, String order, String check) {
        return """
                coalesce((SELECT c.entry FROM catalog.equipment_check c JOIN catalog.check_radiometer m USING (entry)
                  WHERE c.equipment = r.equipment AND c.checked_at %1$s AND %3$s
                  ORDER BY c.checked_at %2$s, c.entry %2$s LIMIT 1), 0)""".formatted(when, order, check);
    }

    /** The revision {@code p} in force when a run {@code r} began, as known now. */
    String inForce() {
        return """
                CROSS JOIN LATERAL (
                  SELECT p.entry FROM catalog.%1$s_revision p WHERE p.%1$s = r.%1$s AND p.effective_at <= r.started_at
                  ORDER BY p.effective_at DESC, p.entry DESC LIMIT 1) p
                """.formatted(thing);
    }

    static String now(String column) {
        return Known.now(column);
    }
}
