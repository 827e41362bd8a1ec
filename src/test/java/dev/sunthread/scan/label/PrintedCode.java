package dev.sunthread.scan.label;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.view.ViewBox;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.LuminanceSource;
import com.google.zxing.MultiFormatReader;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Objects;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;

/** Draws what was printed as a picture and reads its code back with ZXing, which took no part in writing it. */
final class PrintedCode {

    private static final int DOTS_PER_INCH = 300;

    private PrintedCode() {}

    static String ofSvg(String svg, LabelSize size) throws Exception {
        SVGDocument document = Objects.requireNonNull(new SVGLoader()
                .load(
                        new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)),
                        null,
                        LoaderContext.createDefault()));
        int width = dots(size.width());
        int height = dots(size.height());
        BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D drawing = picture.createGraphics();
        drawing.setColor(Color.WHITE);
        drawing.fillRect(0, 0, width, height);
        document.render((java.awt.Component) null, drawing, new ViewBox(0, 0, width, height));
        drawing.dispose();
        return read(aimedAt(picture, 0, 0, size));
    }

    /** The code of the label whose upper left corner is there on a page. */
    static String ofPdf(byte[] pdf, int page, LabelSize size, double left, double top) throws Exception {
        return read(aimedAt(page(pdf, page), dots(left), dots(top), size));
    }

    /** What a person aims a scanner at: the code and what is just around it. */
    private static BufferedImage aimedAt(BufferedImage picture, int left, int top, LabelSize size) {
        int side = dots(size.codeSide() + 2 * LabelSize.EDGE);
        return picture.getSubimage(
                left, top, Math.min(side, picture.getWidth() - left), Math.min(side, picture.getHeight() - top));
    }

    static BufferedImage page(byte[] pdf, int page) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFRenderer(document).renderImageWithDPI(page, DOTS_PER_INCH);
        }
    }

    private static int dots(double millimetres) {
        return (int) Math.round(millimetres / 25.4 * DOTS_PER_INCH);
    }

    private static String read(BufferedImage picture) throws NotFoundException {
        int width = picture.getWidth();
        int[] dots = picture.getRGB(0, 0, width, picture.getHeight(), null, 0, width);
        LuminanceSource source = new RGBLuminanceSource(width, picture.getHeight(), dots);
        return new MultiFormatReader()
                .decode(new BinaryBitmap(new HybridBinarizer(source)), Map.of(DecodeHintType.TRY_HARDER, Boolean.TRUE))
                .getText();
    }
}
