package dev.sunthread.paper.sheet;

import java.util.List;

/**
 * What is printed on a sheet of blank records, in the reader's language.
 *
 * @param title what the records are for
 * @param lines where, when and by whom it was printed, and what to do with it
 * @param cautions what to beware of
 * @param boxes the label of each box of a record
 * @param records the ids of the records
 */
public record SheetText(
        String title, List<String> lines, List<String> cautions, List<String> boxes, List<String> records) {}
