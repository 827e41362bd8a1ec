package dev.sunthread.station.web;

import dev.sunthread.station.Say;
import java.util.Locale;
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
        return say.key().equals("said")
                ? say.with().get(0)
                : messages.getMessage("work." + say.key(), say.with().toArray(), locale);
    }
}
