package dev.sunthread.scan.label;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;

/** Draws labels on sheets as PDF, in their true size. */
public final class LabelSheets {

    private final PDDocument document;
    private final PDFont font;
    private final LabelSize size;
    private final Symbology symbology;

    private LabelSheets(PDDocument document, LabelSize size, Symbology symbology) throws IOException {
        this.document = document;
        this.size = size;
        this.symbology = symbology;
        this.font = PdfPen.font(document);
    }

    /**
     * The labels as a PDF document.
     *
     * @param skip how many places of the first sheet are used already
     * @throws dev.sunthread.kernel.Refused if one can't be read at that size
     */
    public static byte[] pdf(List<Label> labels, LabelSize size, Symbology symbology, int skip) {
        try (PDDocument document = new PDDocument();
                ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
            new LabelSheets(document, size, symbology).write(labels, Math.floorMod(skip, size.perSheet()));
            document.save(bytes);
            return bytes.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void write(List<Label> labels, int skip) throws IOException {
        int per = size.perSheet();
        for (int from = -skip; from < labels.size(); from += per) {
            try (PdfPen pen = new PdfPen(
                    document, font, size.sheet().width(), size.sheet().height())) {
                for (int i = Math.max(0, from); i < Math.min(labels.size(), from + per); i++) {
                    write(pen, labels.get(i), i - from);
                }
            }
        }
    }

    private void write(PdfPen pen, Label label, int place) throws IOException {
        LabelSize.Sheet sheet = size.sheet();
        double left = sheet.left() + place % sheet.columns() * sheet.across();
        double top = sheet.top() + place / sheet.columns() * sheet.down();
        Layout layout = Layout.of(label, size, symbology);
        pen.code(layout.code(), left + LabelSize.EDGE, top + LabelSize.EDGE, layout.module());
        for (Layout.Text line : layout.texts()) {
            pen.text(line.text(), left + line.x(), top + line.y(), line.size());
        }
    }
}
