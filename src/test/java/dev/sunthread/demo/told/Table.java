package dev.sunthread.demo.told;

import java.util.List;

/** Rows of a text block, their columns parted by bars. */
public final class Table {

    private Table() {}

    public static List<List<String>> rows(String text) {
        return text.lines()
                .map(line -> List.of(line.strip().split("\\s*\\|\\s*")))
                .toList();
    }

    /** The members of a column, parted by commas; a hyphen stands for none. */
    public static List<String> members(String column) {
        return column.equals("-") ? List.of() : List.of(column.split(","));
    }
}
