package dev.sunthread.web.language;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.springframework.context.MessageSource;

/** Forms of sentences that stay in English where they are composed, and the same in another language. */
record Forms(MessageSource messages, List<Saying> sayings) {

    /** A sentence in another language by the first form that fits, with what it names as it stands. */
    Optional<String> say(String sentence, Locale reader) {
        for (Saying saying : sayings) {
            Optional<List<String>> places = saying.read(sentence);
            if (places.isPresent()) {
                return Optional.of(
                        messages.getMessage(saying.key(), places.get().toArray(), reader));
            }
        }
        return Optional.empty();
    }
}
