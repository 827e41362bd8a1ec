package dev.sunthread.scan.label;

import dev.sunthread.kernel.Refused;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Where everything of a label stands, in millimetres from its upper left corner.
 *
 * @param module the side of a module of the code
 * @param texts what is written, each line on its base line
 */
record Layout(Symbology.Drawn code, double module, List<Text> texts) {

    /** A line of text with the height of its letters. */
    record Text(String text, double x, double y, double size) {}

    /** Common practice for hand-held scanners on paper. */
    private static final double SMALLEST_MODULE = 0.25;

    private static final double LARGEST_NAME = 6;
    private static final double EASILY_READ = 2.4;
    private static final double SMALL = 2.4;
    /** Letters are at most about this wide, as a part of their size. */
    private static final double LETTER = 0.68;

    private static final double LINE = 1.2;
    private static final int MOST_NAME_LINES = 4;

    /** Lays out a label. @throws Refused if its code would be too fine to be read */
    static Layout of(Label label, LabelSize size, Symbology symbology) {
        Symbology.Drawn code = symbology.draw(label.code());
        double module = size.codeSide() / code.side();
        if (module < SMALLEST_MODULE) {
            throw new Refused(
                    String.format(
                            Locale.ROOT,
                            "The code on %s would have modules of %.2f mm, too fine to be read",
                            size.name(),
                            module),
                    "Choose a larger label or the other kind of code");
        }
        return new Layout(code, module, texts(label, size));
    }

    private static List<Text> texts(Label label, LabelSize size) {
        List<Text> texts = new ArrayList<>();
        double y = LabelSize.EDGE + SMALL;
        texts.add(fitted(label.heading(), size, y, SMALL));
        double room = size.height()
                - 2 * LabelSize.EDGE
                - SMALL * LINE * (1 + label.lines().size());
        List<String> name = wrapped(label.name(), size.textWidth(), room);
        double nameSize = nameSize(name, size.textWidth(), room);
        for (String line : name) {
            y += nameSize * LINE;
            texts.add(new Text(line, size.textLeft(), y, nameSize));
        }
        for (String line : label.lines()) {
            y += SMALL * LINE;
            texts.add(fitted(line, size, y, SMALL));
        }
        return texts;
    }

    private static Text fitted(String text, LabelSize size, double y, double largest) {
        return new Text(text, size.textLeft(), y, Math.min(largest, widest(text, size.textWidth())));
    }

    private static double widest(String text, double width) {
        return width / (LETTER * Math.max(1, text.length()));
    }

    /** The name on one line, or, if that makes it hard to read, on as many as make it largest. */
    private static List<String> wrapped(String name, double width, double room) {
        List<String> best = List.of(name);
        boolean small = nameSize(best, width, room) < EASILY_READ;
        for (int lines = 2; small && lines <= Math.min(MOST_NAME_LINES, name.length()); lines++) {
            List<String> split = split(name, lines);
            if (nameSize(split, width, room) > nameSize(best, width, room)) {
                best = split;
            }
        }
        return best;
    }

    private static double nameSize(List<String> lines, double width, double room) {
        double widest =
                lines.stream().mapToDouble(line -> widest(line, width)).min().orElse(LARGEST_NAME);
        return Math.min(Math.min(LARGEST_NAME, widest), Math.max(1, room) / (LINE * lines.size()));
    }

    private static List<String> split(String name, int lines) {
        int each = (name.length() + lines - 1) / lines;
        List<String> split = new ArrayList<>();
        for (int from = 0; from < name.length(); from += each) {
            split.add(name.substring(from, Math.min(name.length(), from + each)));
        }
        return split;
    }
}
