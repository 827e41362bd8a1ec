package dev.sunthread.kernel.verdict;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** The English messages of judging, read as they stand beside those of other languages. */
final class English {

    private static final ResourceBundle WORDS = ResourceBundle.getBundle(
            "messages.judging",
            Locale.ROOT,
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));

    private English() {}

    static String say(String code, Object[] places) {
        return new MessageFormat(WORDS.getString(code), Locale.ROOT).format(places);
    }
}
