package dev.sunthread.genealogy.web;

import java.time.Duration;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * How long a program is willing to wait, by its header {@code Prefer} (RFC 7240, 4.1 and 4.3).
 *
 * @param respondsAsync whether it asks to be told how far the answer is rather than to wait for it
 * @param longest the time that it is willing to wait; absent if it does not say
 */
record Preference(boolean respondsAsync, @Nullable Duration longest) {

    private static final Pattern ASYNC =
            Pattern.compile("(^|[,;\\s])respond-async($|[,;\\s])", Pattern.CASE_INSENSITIVE);
    private static final Pattern WAIT =
            Pattern.compile("(?:^|[,;\\s])wait\\s*=\\s*\"?(\\d{1,6})\"?(?:$|[,;\\s])", Pattern.CASE_INSENSITIVE);

    static Preference read(@Nullable String header) {
        String told = header == null ? "" : header;
        Matcher wait = WAIT.matcher(told);
        return new Preference(
                ASYNC.matcher(told).find(), wait.find() ? Duration.ofSeconds(Long.parseLong(wait.group(1))) : null);
    }

    /** As long as it says; else a moment where it asks for no wait, and the longest where it does not. */
    Duration orElse(Duration moment, Duration usual) {
        return Optional.ofNullable(longest).orElse(respondsAsync ? moment : usual);
    }
}
