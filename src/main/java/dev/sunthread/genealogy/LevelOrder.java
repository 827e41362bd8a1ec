package dev.sunthread.genealogy;

/** The order in which answers list levels: units from the outermost to the innermost, then containers, lots and runs. */
public final class LevelOrder {

    /** What lines of an answer are sorted by: smallest first; levels of one rank are told apart by their names. */
    public static final String RANK = rank("kind", "depth");

    private LevelOrder() {}

    /** The rank of what stands in these columns. */
    public static String rank(String kind, String depth) {
        return "CASE %s WHEN 'UNIT' THEN -%s WHEN 'CONTAINER' THEN 1 WHEN 'LOT' THEN 2 ELSE 3 END"
                .formatted(kind, depth);
    }
}
