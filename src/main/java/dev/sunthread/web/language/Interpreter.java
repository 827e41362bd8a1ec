package dev.sunthread.web.language;

import dev.sunthread.kernel.verdict.Phrase;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;

/**
 * Puts a sentence that the application composed of records into the reader's language. Such sentences are kept in English
 * with an answer, whose hash they are part of; what has none of the known forms stays as it is. A person's own words are
 * not touched.
 */
@Component("interpreter")
public class Interpreter {

    private static final String FORMS = "messages/sentences";

    private static final String HOLD = "quoted.hold";

    /** Of these the places are told by rules: a rule's name or the sentence it was recorded with. */
    private static final String BY_RULES = "ruled.";

    private final MessageSource messages;
    private final List<Saying> sayings;
    private final RuleForms rules;
    private final Forms reasons;

    Interpreter(MessageSource messages) {
        this.messages = messages;
        this.sayings = sayings();
        this.rules = new RuleForms(messages);
        this.reasons = Forms.given(messages);
    }

    /** The forms in the order of their file, of which the first that fits is taken. */
    static List<Saying> sayings() {
        return Saying.all(FORMS);
    }

    /** The sentence in the language of the page that is being written; a phrase by its message. */
    public String say(@Nullable Object sentence) {
        Locale reader = LocaleContextHolder.getLocale();
        if (sentence instanceof Phrase phrase) {
            return phrase.said((code, places) -> messages.getMessage(code, places, reader));
        }
        String text = sentence == null ? "" : sentence.toString();
        return reader.getLanguage().equals(Locale.ENGLISH.getLanguage()) ? text : say(text, reader);
    }

    /** A phrase in the language of the page; any other text, such as the mark of a sensor, as it stands. */
    public String phrase(@Nullable Object text) {
        return text instanceof Phrase phrase ? say(phrase) : String.valueOf(text == null ? "" : text);
    }

    /** Why something is on hold or behind, in the language of the page if the record itself says so. */
    public String given(String reason) {
        return given(reason, LocaleContextHolder.getLocale());
    }

    private String given(String reason, Locale reader) {
        return reader.getLanguage().equals(Locale.ENGLISH.getLanguage())
                ? reason
                : reasons.say(reason, reader).orElse(reason);
    }

    String say(String text, Locale reader) {
        for (Saying saying : sayings) {
            Optional<List<String>> places = saying.read(text);
            if (places.isPresent()) {
                Object[] said = places.get().stream()
                        .map(place -> place(saying, place, reader))
                        .toArray();
                return asBegun(text, messages.getMessage(saying.key(), said, text, reader));
            }
        }
        return text;
    }

    private String place(Saying saying, String place, Locale reader) {
        if (saying.key().startsWith(BY_RULES)) {
            return rules.words(place, reader);
        }
        if (saying.key().equals(HOLD)) {
            return given(place, reader);
        }
        return saying.quotes() ? place : say(place, reader);
    }

    private static String asBegun(String text, @Nullable String said) {
        if (said == null || said.isEmpty()) {
            return text;
        }
        return Character.isUpperCase(text.charAt(0)) ? Character.toUpperCase(said.charAt(0)) + said.substring(1) : said;
    }
}
