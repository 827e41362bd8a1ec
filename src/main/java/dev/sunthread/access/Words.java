package dev.sunthread.access;

import dev.sunthread.kernel.Refused;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;

/** The texts of this module in the language of whoever reads them. */
@Component
public class Words {

    private final MessageSource messages;

    Words(MessageSource messages) {
        this.messages = messages;
    }

    /** The text with this name below {@code access.}; the name itself if there is none. */
    public String of(String name, Object... values) {
        String code = "access." + name;
        return String.valueOf(messages.getMessage(code, values, code, LocaleContextHolder.getLocale()));
    }

    /** A refusal whose reason and remedy are texts. */
    public Refused refused(String name, Object... values) {
        return new Refused(of("refused." + name, values), of("refused." + name + ".remedy", values));
    }
}
