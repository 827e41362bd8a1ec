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
    static final double SMALLEST_MODULE = 0.25;

    private static final double LARGEST_NAME = 6;
    private static final double EASILY_READ = 2.4;
    private static final double LARGEST_OTHER = 2.4;

    /** What else stands on a label is at most so large as a part of the name: the name is what people look for. */
    private static final double OTHERS = 0.8;

    private static final double LINE = 1.2;
    private static final int MOST_NAME_LINES = 4;

    /** How the name is parted, and how large it and all else is written. */
    private record Sizes(List<String> name, double ofName, double ofOthers) {}

    /** Lays out a label. @throws Refused if its code would be too fine to be read */
    static Layout of(Label label, LabelSize size, Symbology symbology) {
        LabelCode.refuseUnlessReadAlike(label.code());
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
        Sizes sizes = sizes(label, size);
        List<Text> texts = new ArrayList<>();
        double y = LabelSize.EDGE + sizes.ofOthers;
        texts.add(fitted(label.heading(), size, y, sizes.ofOthers));
        for (String line : sizes.name) {
            y += sizes.ofName * LINE;
            texts.add(new Text(line, size.textLeft(), y, sizes.ofName));
        }
        for (String line : label.lines()) {
            y += sizes.ofOthers * LINE;
            texts.add(fitted(line, size, y, sizes.ofOthers));
        }
        return texts;
    }

    private static Text fitted(String text, LabelSize size, double y, double largest) {
        return new Text(text, size.textLeft(), y, Math.min(largest, widest(text, size.textWidth())));
    }

    private static double widest(String text, double width) {
        return width / Math.max(1, LetterWidths.of(text));
    }

    /** The name on one line, or, if that makes it hard to read, on as many as make it largest. */
    private static Sizes sizes(Label label, LabelSize size) {
        Sizes best = sizes(List.of(label.name()), label, size);
        boolean small = best.ofName < EASILY_READ;
        for (int lines = 2;
                small && lines <= Math.min(MOST_NAME_LINES, label.name().length());
                lines++) {
            Sizes split = sizes(split(label.name(), lines), label, size);
            best = split.ofName > best.ofName ? split : best;
        }
        return best;
    }

    // all lines fit into the height, and the name is the largest of them
    private static Sizes sizes(List<String> name, Label label, LabelSize size) {
        double lines = (size.height() - 2 * LabelSize.EDGE) / LINE;
        int others = 1 + label.lines().size();
        double widest = name.stream()
                .mapToDouble(line -> widest(line, size.textWidth()))
                .min()
                .orElse(LARGEST_NAME);
        double tallest =
                Math.max(lines / (name.size() + OTHERS * others), (lines - LARGEST_OTHER * others) / name.size());
        double ofName = Math.min(Math.min(LARGEST_NAME, widest), tallest);
        return new Sizes(name, ofName, Math.min(LARGEST_OTHER, OTHERS * ofName));
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
