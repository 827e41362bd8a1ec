package dev.sunthread.paper.web;

import dev.sunthread.paper.FormKind;
import dev.sunthread.paper.form.Box;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;

/** Says what forms ask for in the reader's language; templates know it as {@code @paperWords}. */
@Component("paperWords")
class PaperWords {

    private final MessageSource messages;

    PaperWords(MessageSource messages) {
        this.messages = messages;
    }

    /** The label of a box, such as {@code Serial of RCV-10}. */
    public String of(Box box) {
        return of(box.label(), box.with().toArray());
    }

    public String of(String key, Object... with) {
        return messages.getMessage(key, with, LocaleContextHolder.getLocale());
    }

    /** What a form is for, such as {@code Charge} or {@code bond on RCV-10}. */
    public String of(FormKind kind, @Nullable String item, @Nullable String operation) {
        return item != null && operation != null
                ? of("paper.for-operation", operation, item)
                : of("paper.form." + kind.name());
    }
}
