package dev.sunthread.scan.label;

import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * A size of labels and the sheet or roll they are on, in millimetres.
 *
 * @param name what people choose it by
 */
public record LabelSize(String name, double width, double height, Sheet sheet) {

    /** Millimetres that stay free at the edges of a label. */
    static final double EDGE = 1;

    /**
     * A sheet, or a roll as a sheet of one label.
     *
     * @param left from the edge of the sheet to the first label
     * @param top from the edge of the sheet to the first label
     * @param across from the left edge of a label to that of the next
     * @param down from the upper edge of a label to that of the next
     */
    public record Sheet(
            double width,
            double height,
            @DefaultValue("1") int columns,
            @DefaultValue("1") int rows,
            @DefaultValue("0") double left,
            @DefaultValue("0") double top,
            @DefaultValue("0") double across,
            @DefaultValue("0") double down) {}

    public LabelSize {
        boolean fits = width > 4
                && height > 4
                && sheet.columns() > 0
                && sheet.rows() > 0
                && sheet.left() + (sheet.columns() - 1) * sheet.across() + width <= sheet.width() + 0.01
                && sheet.top() + (sheet.rows() - 1) * sheet.down() + height <= sheet.height() + 0.01;
        if (!fits) {
            throw new IllegalArgumentException("Label size " + name + " does not fit its sheet: give millimetres,"
                    + " with columns, rows, left, top, across and down");
        }
    }

    /** How many labels a sheet has. */
    public int perSheet() {
        return sheet.columns() * sheet.rows();
    }

    /** The side of the square that a code may take. */
    double codeSide() {
        return Math.min(height, width / 2) - 2 * EDGE;
    }

    /** Where the text begins. */
    double textLeft() {
        return codeSide() + 2 * EDGE;
    }

    double textWidth() {
        return width - textLeft() - EDGE;
    }
}
