package dev.sunthread.web.table;

import dev.sunthread.kernel.Table;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.dhatim.fastexcel.Workbook;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

/** Writes a table as an Excel workbook; what one sheet can't hold goes on in the next. */
@Component("xlsx")
class XlsxView extends TableView {

    private final Cells cells;

    XlsxView(Cells cells, MessageSource messages) {
        super(messages, "xlsx", "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet");
        this.cells = cells;
    }

    @Override
    void write(Table<?> table, HttpServletResponse response) throws IOException {
        try (Workbook book = new Workbook(response.getOutputStream(), "Sunthread", "1.0")) {
            Sheets sheets = new Sheets(book, table, cells);
            table.rows(sheets::row);
            sheets.finish();
        }
    }
}
