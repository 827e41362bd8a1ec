package dev.sunthread.web.receipt;

import dev.sunthread.scan.meaning.Reading;
import java.util.stream.Collectors;

/** A reading as one line of text, to be kept with the choice of it. */
final class ReadingText {

    private ReadingText() {}

    static String of(Reading reading) {
        return reading.elements().stream()
                .map(element -> element.identifier().isEmpty()
                        ? element.value()
                        : "(" + element.identifier() + ")" + element.value())
                .collect(Collectors.joining(" "));
    }
}
