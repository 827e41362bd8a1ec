package dev.sunthread.web.language;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.springframework.context.MessageSource;

/** Forms of sentences that stay in English where they are composed, and the same in another language. */
record Forms(MessageSource messages, List<Saying> sayings) {

    /** Reasons that the record itself gives, such as of a hold that follows from another. */
    static Forms given(MessageSource messages) {
        return new Forms(
                messages,
                Saying.all("messages/sentences").stream()
                        .filter(saying -> saying.key().startsWith("given."))
                        .toList());
    }

    /** A sentence in another language by the first form that fits, with what it names as it stands. */
    Optional<String> say(String sentence, Locale reader) {
        return say(sentence, reader, UnaryOperator.identity());
    }

    /** The same, with what it names put into words by {@code named}. */
    Optional<String> say(String sentence, Locale reader, UnaryOperator<String> named) {
        for (Saying saying : sayings) {
            Optional<List<String>> places = saying.read(sentence);
            if (places.isPresent()) {
                Object[] said = places.get().stream().map(named).toArray();
                return Optional.of(messages.getMessage(saying.key(), said, reader));
            }
        }
        return Optional.empty();
    }
}
