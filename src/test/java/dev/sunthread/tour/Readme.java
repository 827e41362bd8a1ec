package dev.sunthread.tour;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The README: the pictures that it shows, and the part of it that is made from answers. */
final class Readme {

    static final Path PICTURES = Path.of("src", "docs", "pictures");
    static final Path FILE = Path.of("README.md");

    private static final Pattern MADE = Pattern.compile(
            "(?<=<!-- counts of the demo plant, made by TourTests -->\n).*?(?=<!-- end of counts -->)", Pattern.DOTALL);
    private static final Pattern PICTURE = Pattern.compile("!\\[[^\\]]+]\\((src/docs/pictures/[^)]+)\\)");

    private static final Pattern NAME = Pattern.compile("`([A-Z]+-\\d+)`");

    private Readme() {}

    /** The lines between the marks of what is made. */
    static String counts() throws IOException {
        Matcher made = MADE.matcher(Files.readString(FILE));
        if (!made.find()) {
            throw new IllegalStateException("README.md lacks the marks between which the counts stand");
        }
        return made.group();
    }

    static void writeCounts(String counts) throws IOException {
        String text = Files.readString(FILE);
        Files.writeString(FILE, MADE.matcher(text).replaceFirst(Matcher.quoteReplacement(counts)));
    }

    /** What the tour names to be typed into the search box. */
    static List<String> names() throws IOException {
        String text = Files.readString(FILE);
        return NAME.matcher(text.substring(text.indexOf("## Look around"), text.indexOf("## Record in it")))
                .results()
                .map(name -> name.group(1))
                .distinct()
                .toList();
    }

    /** The pictures in the order in which they are shown. */
    static List<Path> pictures() throws IOException {
        return PICTURE.matcher(Files.readString(FILE))
                .results()
                .map(picture -> Path.of(picture.group(1)))
                .toList();
    }
}
