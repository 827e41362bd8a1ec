package dev.sunthread.paper.sheet;

import dev.sunthread.scan.label.LabelCode;
import dev.sunthread.scan.label.PdfPen;
import dev.sunthread.scan.label.Symbology;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;

/** Draws a sheet of blank records on A4 paper: each with its id as text and as a code, and boxes to write in. */
public final class SheetPdf {

    /** Millimetres; the size of ISO 216 A4. */
    private static final double WIDTH = 210;

    private static final double HEIGHT = 297;
    private static final double EDGE = 10;
    private static final double CODE = 17;
    private static final double LEFT = EDGE + 30;
    private static final int COLUMNS = 3;
    private static final double BOX_WIDTH = (WIDTH - EDGE - LEFT) / COLUMNS;
    private static final double BOX_HEIGHT = 11.5;
    private static final double LABEL = 2.3;
    private static final double INSIDE = 1.2;
    private static final double BETWEEN = 4;
    private static final double LINE = 4.2;

    private final SheetText text;

    private SheetPdf(SheetText text) {
        this.text = text;
    }

    /** The sheet as a PDF document; a record is never torn over two pages. */
    public static byte[] of(SheetText text) {
        try (PDDocument document = new PDDocument();
                ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
            new SheetPdf(text).write(document);
            document.save(bytes);
            return bytes.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void write(PDDocument document) throws IOException {
        PDFont font = PdfPen.font(document);
        int perPage = Math.max(1, (int) ((HEIGHT - EDGE - head()) / (recordHeight() + BETWEEN)));
        int pages = (text.records().size() + perPage - 1) / perPage;
        for (int page = 0; page < pages; page++) {
            try (PdfPen pen = new PdfPen(document, font, WIDTH, HEIGHT)) {
                head(pen, (page + 1) + " / " + pages);
                for (int i = 0;
                        i < perPage && page * perPage + i < text.records().size();
                        i++) {
                    record(pen, page * perPage + i, head() + i * (recordHeight() + BETWEEN));
                }
            }
        }
    }

    /** Where the records begin. */
    private double head() {
        return EDGE + 9 + LINE * (text.lines().size() + text.cautions().size()) + BETWEEN;
    }

    private double recordHeight() {
        int rows = (text.boxes().size() + COLUMNS - 1) / COLUMNS;
        return Math.max(rows * BOX_HEIGHT, CODE + 12);
    }

    private void head(PdfPen pen, String page) throws IOException {
        double y = EDGE + 5;
        pen.fitted(text.title(), EDGE, y, 5.5, WIDTH - 2 * EDGE - 20);
        pen.text(page, WIDTH - EDGE - 12, y, 3.2);
        y += 2;
        for (String line : text.lines()) {
            y += LINE;
            pen.fitted(line, EDGE, y, 3.1, WIDTH - 2 * EDGE);
        }
        for (String caution : text.cautions()) {
            y += LINE;
            pen.fitted("! " + caution, EDGE, y, 3.3, WIDTH - 2 * EDGE);
        }
    }

    private void record(PdfPen pen, int index, double top) throws IOException {
        String id = text.records().get(index);
        Symbology.Drawn code = Symbology.DATA_MATRIX.draw(LabelCode.paper(id));
        pen.outline(EDGE, top, WIDTH - 2 * EDGE, recordHeight(), 0.5);
        pen.code(code, EDGE + 2, top + 1.5, CODE / code.side());
        pen.fitted(id, EDGE + 2, top + CODE + 6, 5, LEFT - EDGE - 4);
        pen.text((index + 1) + " / " + text.records().size(), EDGE + 2, top + CODE + 10, 2.8);
        List<String> boxes = text.boxes();
        for (int i = 0; i < boxes.size(); i++) {
            double x = LEFT + i % COLUMNS * BOX_WIDTH;
            double y = top + i / COLUMNS * BOX_HEIGHT;
            // the last one, for the signature, has what is left of its row
            double width = i == boxes.size() - 1 ? WIDTH - EDGE - x : BOX_WIDTH;
            pen.outline(x, y, width, BOX_HEIGHT, 0.15);
            pen.fitted(boxes.get(i), x + INSIDE, y + INSIDE + LABEL * 0.8, LABEL, width - 2 * INSIDE);
        }
    }
}
