package dev.sunthread.scan.label;

import dev.sunthread.kernel.Refused;
import java.util.List;
import uk.org.okapibarcode.backend.DataMatrix;
import uk.org.okapibarcode.backend.OkapiException;
import uk.org.okapibarcode.backend.QrCode;
import uk.org.okapibarcode.backend.Symbol;
import uk.org.okapibarcode.graphics.Rectangle;

/** The two-dimensional codes that labels may have. */
public enum Symbology {
    /** Data Matrix ECC 200 (ISO/IEC 16022), with the quiet zone of one module that it asks for. */
    DATA_MATRIX(1),
    /** QR code (ISO/IEC 18004), with the quiet zone of four modules that it asks for. */
    QR(4);

    /**
     * A drawn code.
     *
     * @param side its width and height in modules, quiet zone included
     * @param dark its dark modules, in modules from the upper left corner
     */
    public record Drawn(int side, List<Rectangle> dark) {}

    private final int quietZone;

    Symbology(int quietZone) {
        this.quietZone = quietZone;
    }

    /** Draws a code. @throws Refused if it can't hold the text */
    public Drawn draw(String text) {
        Symbol symbol = symbol();
        symbol.setModuleWidth(1);
        symbol.setQuietZoneHorizontal(quietZone);
        symbol.setQuietZoneVertical(quietZone);
        try {
            symbol.setContent(text);
        } catch (OkapiException e) {
            throw new Refused(
                    "The code can’t hold the label’s text: " + e.getMessage(), "Choose the other kind of code");
        }
        return new Drawn(symbol.getWidth(), List.copyOf(symbol.getRectangles()));
    }

    private Symbol symbol() {
        if (this == QR) {
            QrCode code = new QrCode();
            code.setPreferredEccLevel(QrCode.EccLevel.M);
            return code;
        }
        DataMatrix code = new DataMatrix();
        code.setForceMode(DataMatrix.ForceMode.SQUARE);
        return code;
    }
}
