package dev.sunthread.web.table;

import dev.sunthread.kernel.Table;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.List;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.jspecify.annotations.Nullable;

/** Fills the sheets of a workbook row by row and lets each go to the reader as it grows. */
final class Sheets {

    private static final int ROWS_A_SHEET = 1_000_000;
    private static final int ROWS_IN_MEMORY = 1000;
    /** The digits that a number of a spreadsheet keeps; a longer one is written as text. */
    private static final int DIGITS_KEPT = 15;
    /** The most that a cell can hold. */
    private static final int LONGEST = 32_767;

    private final Workbook book;
    private final Table<?> table;
    private final Cells cells;
    private Worksheet sheet;
    private int sheets;
    private int rows;

    Sheets(Workbook book, Table<?> table, Cells cells) {
        this.book = book;
        this.table = table;
        this.cells = cells;
        this.sheet = begin();
    }

    private Worksheet begin() {
        sheets++;
        rows = 0;
        Worksheet begun = book.newWorksheet(sheets == 1 ? table.name() : table.name() + " " + sheets);
        List<String> headings = table.headings();
        for (int column = 0; column < headings.size(); column++) {
            begun.value(0, column, headings.get(column));
            begun.style(0, column).bold().set();
        }
        begun.freezePane(0, 1);
        return begun;
    }

    void row(List<@Nullable Object> row) {
        if (rows == ROWS_A_SHEET) {
            finish();
            sheet = begin();
        }
        rows++;
        for (int column = 0; column < row.size(); column++) {
            cell(column, row.get(column));
        }
        if (rows % ROWS_IN_MEMORY == 0) {
            flush();
        }
    }

    private void cell(int column, @Nullable Object value) {
        if (value instanceof Number number && new BigDecimal(number.toString()).precision() <= DIGITS_KEPT) {
            sheet.value(rows, column, number);
        } else if (value != null) {
            String text = cells.text(value);
            // written in its place: a shared list of texts would have to be held until the end
            sheet.inlineString(rows, column, text.length() > LONGEST ? text.substring(0, LONGEST) : text);
        }
    }

    void finish() {
        try {
            sheet.finish();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void flush() {
        try {
            sheet.flush();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
