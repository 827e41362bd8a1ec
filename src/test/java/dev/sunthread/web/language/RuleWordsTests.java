package dev.sunthread.web.language;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.kernel.Refused;
import dev.sunthread.kernel.RuleBroken;
import dev.sunthread.ledger.body.FieldProblem;
import dev.sunthread.ledger.body.Unreadable;
import dev.sunthread.testing.RulesOfCode;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.context.i18n.LocaleContextHolder;

/** What rules say in the reader's language. */
class RuleWordsTests {

    private final RuleWords words = new RuleWords(InterpreterTests.messages());

    @AfterEach
    void readNothing() {
        LocaleContextHolder.resetLocaleContext();
    }

    private RuleWords.Told inGerman(String rule, String sentence) {
        LocaleContextHolder.setLocale(Locale.GERMAN);
        return words.say(rule, sentence, "Some remedy");
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void sayOfEveryRuleWhatIsWrongAndWhatToDoAndOfNoOther(String language) throws IOException {
        ResourceBundle bundle = bundle(Locale.forLanguageTag(language));
        Set<String> rules = RulesOfCode.names();
        Set<String> keys = new TreeSet<>(bundle.keySet());
        assertThat(keys.removeAll(Set.of("passed.by", "passed.do"))).isTrue();
        for (String rule : rules) {
            assertThat(List.of(bundle.getString("rule." + rule), bundle.getString("rule." + rule + ".do")))
                    .as(rule)
                    .allSatisfy(sentence -> assertThat(sentence).matches("[A-ZÄÖÜ].*[.]"));
        }
        assertThat(keys)
                .extracting(key -> key.replaceFirst("^rule[.]", "").replaceFirst("[.](do|said\\d?)$", ""))
                .allSatisfy(rule -> assertThat(rules).contains(rule));
    }

    static Stream<Saying> forms() {
        return Saying.all("messages/rules").stream()
                .filter(saying -> saying.key().contains(".said"));
    }

    @ParameterizedTest
    @MethodSource("forms")
    void everyFormIsTakenForItselfAndKeepsWhatItNames(Saying form) {
        String rule = form.key().replaceAll("^rule[.]|[.]said\\d?$", "");
        String sentence = bundle(Locale.ENGLISH).getString(form.key()).replaceAll("\\{(\\d)}", "X$1");
        String german = bundle(Locale.GERMAN).getString(form.key()).replaceAll("\\{(\\d)}", "X$1");
        assertThat(inGerman(rule, sentence).wrong()).isEqualTo(german + ".");
        assertThat(german.split("X\\d", -1)).hasSameSizeAs(sentence.split("X\\d", -1));
    }

    private static ResourceBundle bundle(Locale locale) {
        var noFallback = ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);
        return ResourceBundle.getBundle(
                "messages/rules", locale.equals(Locale.ENGLISH) ? Locale.ROOT : locale, noFallback);
    }

    @Test
    void putASentenceWholeIntoAnotherLanguageAndLeaveAPersonsWords() {
        assertThat(inGerman("lot-is-not-on-hold", "Lot A-17 is on hold: bad; see mail"))
                .isEqualTo(new RuleWords.Told(
                        "Los A-17 ist gesperrt: bad; see mail.",
                        "Bringen Sie es in den Sperrbereich und fragen Sie die Qualität.",
                        null,
                        null));
    }

    @Test
    void sayWhyTheRecordItselfPutSomethingOnHold() {
        assertThat(inGerman(
                                "unit-is-not-on-hold",
                                "Unit REC R1 is on hold: It was made of lot A-1 while that was on hold")
                        .wrong())
                .isEqualTo("Einheit REC R1 ist gesperrt: Entstand aus Los A-1, während das gesperrt war.");
    }

    @Test
    void sayWhoPassedARule() {
        RuleWords.Told told = inGerman("lot-is-not-expired", "Lot A-9 had expired; passed by qe-1: tested anew");
        assertThat(told.wrong()).isEqualTo("Los A-9 ist verfallen; Ausnahme unterschrieben von qe-1: tested anew.");
        assertThat(told.remedy()).startsWith("Sehen Sie an, was unterschrieben wurde");
    }

    @Test
    void sayWhatOnlyThisRefusalAdvises() {
        LocaleContextHolder.setLocale(Locale.GERMAN);
        assertThat(words.say(
                                "station-may-do-the-operation",
                                "Operation bond may not be done at SEAL",
                                "Do it at BOND-1, or release a route that allows this station")
                        .remedy())
                .startsWith("Führen Sie ihn an BOND-1 aus, oder");
    }

    @Test
    void sayTheRuleAboveASentenceOfAnotherForm() {
        RuleWords.Told told = inGerman("cure-keeps-its-recipe", "Cure run C-1 broke recipe BAKE: too hot");
        assertThat(told.wrong()).isEqualTo("Ein Härtelauf hat sein Rezept verletzt.");
        assertThat(told.recorded()).isEqualTo("Cure run C-1 broke recipe BAKE: too hot.");
    }

    @Test
    void leaveInEnglishWhatIsNoRules() {
        assertThat(inGerman("body.least", "is more than most").language()).isEqualTo("en");
        assertThat(words.why(new Refused("Das fehlt", "Geben Sie es an")).language())
                .isNull();
    }

    @Test
    void sayWhatIsWrongWithALineWithTheNamesOfItsFields() {
        LocaleContextHolder.setLocale(Locale.GERMAN);
        assertThat(words.say("body.lot", "is missing", "Give text of 1 to 64 visible characters"))
                .isEqualTo(new RuleWords.Told(
                        "fehlt.", "Geben Sie an: Text aus 1 bis 64 sichtbaren Zeichen.", null, null));
        Unreadable unreadable = new Unreadable(List.of(
                new FieldProblem("body.item", "names item \"X\", which is not released", "Some remedy"),
                new FieldProblem("body.lot", "is missing", "Some remedy")));
        assertThat(words.why(unreadable).wrong())
                .isEqualTo("Artikel: nennt Artikel „X“, der nicht freigegeben ist; Los: fehlt.");
    }

    @Test
    void sayInEnglishWhatIsRecorded() {
        LocaleContextHolder.setLocale(Locale.ENGLISH);
        assertThat(words.why(new RuleBroken("lot-is-not-expired", "Lot A-9 had expired", "Set it aside", List.of())))
                .isEqualTo(new RuleWords.Told("Lot A-9 had expired.", "Set it aside.", null, null));
    }
}
