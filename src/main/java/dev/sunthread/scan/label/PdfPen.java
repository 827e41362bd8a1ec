package dev.sunthread.scan.label;

import java.io.IOException;
import java.io.InputStream;
import java.util.Objects;
import java.util.stream.Collectors;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import uk.org.okapibarcode.graphics.Rectangle;

/** Draws on one page of a PDF, in millimetres from its upper left corner. */
public final class PdfPen implements AutoCloseable {

    private static final double POINTS = 72 / 25.4;
    /** A font of free licence that comes with the library. */
    private static final String FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    private final PDFont font;
    private final double height;
    private final PDPageContentStream content;

    /** Adds a page of that size to a document. */
    public PdfPen(PDDocument document, PDFont font, double width, double height) throws IOException {
        PDPage page = new PDPage(new PDRectangle(points(width), points(height)));
        document.addPage(page);
        this.font = font;
        this.height = height;
        this.content = new PDPageContentStream(document, page);
    }

    /** The font to write with, once for each document. */
    public static PDFont font(PDDocument document) throws IOException {
        try (InputStream file = Objects.requireNonNull(PDDocument.class.getResourceAsStream(FONT))) {
            return PDType0Font.load(document, file);
        }
    }

    /** Writes a line whose letters stand on y. */
    public void text(String text, double x, double y, double size) throws IOException {
        content.beginText();
        content.setFont(font, points(size));
        content.newLineAtOffset(points(x), points(height - y));
        content.showText(printable(text));
        content.endText();
    }

    /** Writes a line no wider than there is room, with smaller letters if it must be. */
    public void fitted(String text, double x, double y, double size, double room) throws IOException {
        double width = font.getStringWidth(printable(text)) / 1000 * size;
        text(text, x, y, width > room ? size * room / width : size);
    }

    /** Draws a code whose modules have that side. */
    public void code(Symbology.Drawn code, double x, double y, double module) throws IOException {
        for (Rectangle dark : code.dark()) {
            rectangle(x + dark.x * module, y + dark.y * module, dark.width * module, dark.height * module);
        }
        content.fill();
    }

    /** Draws the outline of a rectangle with a line of that width. */
    public void outline(double x, double y, double width, double tall, double line) throws IOException {
        content.setLineWidth(points(line));
        rectangle(x, y, width, tall);
        content.stroke();
    }

    private void rectangle(double x, double y, double width, double tall) throws IOException {
        content.addRect(points(x), points(height - y - tall), points(width), points(tall));
    }

    /** Characters that the font has not are printed as a question mark; a code holds them as they are. */
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

    @Override
    public void close() throws IOException {
        content.close();
    }
}
