package dev.sunthread.web.language;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;

/** The forms of sentences that rules are recorded with, and the same in another language; what is named stays as it is. */
final class RuleForms {

    private static final String BUNDLE = "messages/rules";
    private static final Pattern KEY = Pattern.compile("rule[.]([a-z-]+)[.]said\\d?");
    private static final Saying PASSED = Saying.of("passed.by", "{0}; passed by {1}: {2}");

    private final MessageSource messages;
    private final Map<String, List<Saying>> byRule;
    private final Forms given;

    RuleForms(MessageSource messages) {
        this.messages = messages;
        this.given = Forms.given(messages);
        this.byRule = Saying.all(BUNDLE).stream()
                .filter(saying -> KEY.matcher(saying.key()).matches())
                .collect(Collectors.groupingBy(
                        saying -> KEY.matcher(saying.key()).replaceAll("$1")));
    }

    /** Whether a person passed the rule that this sentence tells of. */
    static boolean isPassed(String sentence) {
        return PASSED.read(sentence).isPresent();
    }

    /** A sentence of a rule in another language; empty if it has none of the rule's forms. */
    Optional<String> say(String rule, String sentence, Locale reader) {
        Optional<List<String>> passed = PASSED.read(sentence);
        return passed.isEmpty()
                ? plain(rule, sentence, reader)
                : plain(rule, passed.get().get(0), reader)
                        .map(said -> message(
                                PASSED.key(),
                                reader,
                                said,
                                passed.get().get(1),
                                passed.get().get(2)));
    }

    private Optional<String> plain(String rule, String sentence, Locale reader) {
        return new Forms(messages, byRule.getOrDefault(rule, List.of()))
                .say(sentence, reader, place -> given.say(place, reader).orElse(place));
    }

    /** The first rule that has a form of this sentence; an empty text if none has. */
    String ruleOf(String sentence) {
        return byRule.keySet().stream()
                .filter(rule -> say(rule, sentence, Locale.ENGLISH).isPresent())
                .findFirst()
                .orElse("");
    }

    /** A rule's name, written with blanks or not, or a sentence of any rule in another language; else the text itself. */
    String words(String text, Locale reader) {
        String named = messages.getMessage("rule." + text.replace(' ', '-'), null, null, reader);
        return named != null ? named : say(ruleOf(text), text, reader).orElse(text);
    }

    private String message(String key, Locale reader, @Nullable Object... places) {
        return messages.getMessage(key, places, reader);
    }
}
