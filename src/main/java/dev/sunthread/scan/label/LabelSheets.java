package dev.sunthread.scan.label;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import uk.org.okapibarcode.graphics.Rectangle;

/** Draws labels on sheets as PDF, in their true size. */
public final class LabelSheets {

    private static final double POINTS = 72 / 25.4;
    /** A font of free licence that comes with the library. */
    private static final String FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    private final PDDocument document;
    private final PDFont font;
    private final LabelSize size;
    private final Symbology symbology;

    private LabelSheets(PDDocument document, LabelSize size, Symbology symbology) throws IOException {
        this.document = document;
        this.size = size;
        this.symbology = symbology;
        try (InputStream file = Objects.requireNonNull(PDDocument.class.getResourceAsStream(FONT))) {
            this.font = PDType0Font.load(document, file);
        }
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
            PDPage page = new PDPage(new PDRectangle(
                    points(size.sheet().width()), points(size.sheet().height())));
            document.addPage(page);
            try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                for (int i = Math.max(0, from); i < Math.min(labels.size(), from + per); i++) {
                    write(content, labels.get(i), i - from);
                }
            }
        }
    }

    private void write(PDPageContentStream content, Label label, int place) throws IOException {
        LabelSize.Sheet sheet = size.sheet();
        double left = sheet.left() + place % sheet.columns() * sheet.across();
        double top = sheet.top() + place / sheet.columns() * sheet.down();
        Layout layout = Layout.of(label, size, symbology);
        for (Rectangle dark : layout.code().dark()) {
            double height = dark.height * layout.module();
            content.addRect(
                    points(left + LabelSize.EDGE + dark.x * layout.module()),
                    points(sheet.height() - top - LabelSize.EDGE - dark.y * layout.module() - height),
                    points(dark.width * layout.module()),
                    points(height));
        }
        content.fill();
        for (Layout.Text line : layout.texts()) {
            write(content, line, left, sheet.height() - top);
        }
    }

    private void write(PDPageContentStream content, Layout.Text line, double left, double top) throws IOException {
        content.beginText();
        content.setFont(font, points(line.size()));
        content.newLineAtOffset(points(left + line.x()), points(top - line.y()));
        content.showText(printable(line.text()));
        content.endText();
    }

    /** Characters that the font has not are printed as a question mark; the code holds them as they are. */
    private String printable(String text) {
        return text.codePoints()
                .mapToObj(character -> isPrintable(Character.toString(character)) ? Character.toString(character) : "?")
                .collect(Collectors.joining());
    }

    private boolean isPrintable(String character) {
        try {
            font.encode(character);
            return true;
        } catch (IOException | IllegalArgumentException notInTheFont) {
            return false;
        }
    }

    private static float points(double millimetres) {
        return (float) (millimetres * POINTS);
    }
}
