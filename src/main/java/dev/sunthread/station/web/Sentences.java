package dev.sunthread.station.web;

import dev.sunthread.station.Say;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;

/** Says sentences in the reader's language; templates know it as {@code @sentences}. */
@Component("sentences")
class Sentences {

    private final MessageSource messages;

    Sentences(MessageSource messages) {
        this.messages = messages;
    }

    public String of(Say say) {
        Locale locale = LocaleContextHolder.getLocale();
        return switch (say.key()) {
            case "said" -> say.with().get(0);
            case "pass.who" ->
                messages.getMessage(
                        "work.pass.who", new Object[] {rule(say.with().get(0), locale)}, locale);
            default -> messages.getMessage("work." + say.key(), say.with().toArray(), locale);
        };
    }

    private @Nullable String rule(String name, Locale locale) {
        return messages.getMessage("rule." + name, null, name, locale);
    }
}
