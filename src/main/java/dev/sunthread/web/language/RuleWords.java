package dev.sunthread.web.language;

import dev.sunthread.kernel.Refused;
import dev.sunthread.kernel.RuleBroken;
import dev.sunthread.ledger.body.FieldProblem;
import dev.sunthread.ledger.body.Unreadable;
import java.util.Locale;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;

/**
 * Says in the reader's language, on pages, what is refused and what a rule found. Both are told and recorded in English; a
 * sentence of a known form is put whole into the other language, of any other the rule itself is said and the recorded
 * sentence beneath.
 */
@Component("rules")
public class RuleWords {

    /**
     * What a page shows, each a whole sentence.
     *
     * @param wrong what is wrong
     * @param remedy what to do next
     * @param recorded the English sentence as it is recorded, where {@code wrong} does not say all that it says
     * @param language of {@code wrong} and {@code remedy}, if it is known to be another than the page's
     */
    public record Told(
            String wrong,
            String remedy,
            @Nullable String recorded,
            @Nullable String language) {}

    private static final String WHOLE = ".?!";
    private static final String ENGLISH = Locale.ENGLISH.getLanguage();

    private final MessageSource messages;
    private final RuleForms forms;
    private final Forms refusals;

    RuleWords(MessageSource messages) {
        this.messages = messages;
        this.forms = new RuleForms(messages);
        this.refusals = new Forms(messages, Saying.all("messages/refusals"));
    }

    /** @param rule the rule, or the field of a line that can't be read; what is told of no rule and has no known form stays in English */
    public Told say(String rule, String sentence, String remedy) {
        Locale reader = LocaleContextHolder.getLocale();
        if (reader.getLanguage().equals(ENGLISH)) {
            return new Told(whole(sentence), whole(remedy), null, null);
        }
        String says = messages.getMessage("rule." + rule, null, null, reader);
        if (says == null) {
            return refusals.say(sentence, reader)
                    .map(said -> new Told(whole(said), whole(declined(remedy)), null, null))
                    .orElseGet(() -> new Told(whole(sentence), whole(remedy), null, ENGLISH));
        }
        String advice = whole(advice(rule, sentence, remedy, reader));
        return forms.say(rule, sentence, reader)
                .map(said -> new Told(whole(said), advice, null, null))
                .orElseGet(() -> new Told(says, advice, whole(sentence), null));
    }

    /** The same where the rule is known by its sentence alone. */
    public Told say(String sentence, String remedy) {
        return say(forms.ruleOf(sentence), sentence, remedy);
    }

    /** Why something is not done; a reason of no known form, such as one put into words already, stays as it is. */
    public Told why(Refused refused) {
        if (refused instanceof RuleBroken broken) {
            return say(broken.rule(), broken.reason(), broken.remedy());
        }
        return refused instanceof Unreadable unreadable
                ? new Told(
                        whole(declined(
                                unreadable, problem -> called(problem.field()) + ": " + declined(problem.reason()))),
                        whole(declined(unreadable, problem -> declined(problem.remedy()))),
                        null,
                        null)
                : new Told(whole(declined(refused.reason())), whole(declined(refused.remedy())), null, null);
    }

    /** What people call a field of a body, by its path: as the column that shows it, or else its name in words. */
    private String called(String path) {
        String field = path.substring(path.lastIndexOf('.') + 1).replaceFirst("\\[.*", "");
        String words = field.replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT);
        return Objects.requireNonNullElse(
                messages.getMessage("column." + words.replace(' ', '-'), null, null, LocaleContextHolder.getLocale()),
                words);
    }

    private static String declined(Unreadable unreadable, Function<FieldProblem, String> said) {
        return unreadable.problems().stream().map(said).distinct().collect(Collectors.joining("; "));
    }

    /** Words of a refusal by no rule, in the reader's language if they have a known form; else as they are. */
    public String declined(String words) {
        Locale reader = LocaleContextHolder.getLocale();
        return reader.getLanguage().equals(ENGLISH)
                ? words
                : refusals.say(words, reader).orElse(words);
    }

    private String advice(String rule, String sentence, String remedy, Locale reader) {
        return RuleForms.isPassed(sentence)
                ? messages.getMessage("passed.do", null, reader)
                : forms.say(rule, remedy, reader)
                        .orElseGet(() -> messages.getMessage("rule." + rule + ".do", null, reader));
    }

    private static String whole(String sentence) {
        boolean isWhole = sentence.isEmpty() || WHOLE.indexOf(sentence.charAt(sentence.length() - 1)) >= 0;
        return isWhole ? sentence : sentence + ".";
    }
}
