package dev.sunthread.demo;

import java.util.List;

/** Rows of a text block, their columns parted by bars. */
final class Table {

    private Table() {}

    static List<List<String>> rows(String text) {
        return text.lines()
                .map(line -> List.of(line.strip().split("\\s*\\|\\s*")))
                .toList();
    }

    /** The members of a column, parted by commas; a hyphen stands for none. */
    static List<String> members(String column) {
        return column.equals("-") ? List.of() : List.of(column.split(","));
    }
}
