package dev.sunthread.web.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.context.support.ResourceBundleMessageSource;

/** Sentences that the application composes, in another language. */
class InterpreterTests {

    private static final ResourceBundle ENGLISH = ResourceBundle.getBundle("messages/sentences", Locale.ROOT);

    private final Interpreter interpreter = new Interpreter(messages());

    static ResourceBundleMessageSource messages() {
        ResourceBundleMessageSource messages = new ResourceBundleMessageSource();
        messages.setBasenames("messages/sentences", "messages/rules", "messages/refusals", "messages/common");
        messages.setDefaultEncoding("UTF-8");
        messages.setFallbackToSystemLocale(false);
        return messages;
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    lot A-17 | Los A-17
                    in wall W/1 at 2, shipped to Sunny Field, 2026-03-10 10:00 | in wall W/1 auf 2, versandt an Sunny Field, 2026-03-10 10:00
                    Lot A-17 was the one loaded at V1 from 2026-03-10 08:00:00 (inferred, not scanned); receiver R0002 went through bond at BOND 2026-03-10 08:21:00; from there into wall W/1 | Los A-17 war auf V1 bestückt ab 2026-03-10 08:00:00 (erschlossen, nicht gescannt); receiver R0002 durchlief bond an BOND 2026-03-10 08:21:00; von dort in wall W/1
                    What went into wall W/1 at seal from 2026-03-10 08:00:00 to 2026-03-10 09:00:00 is not recorded | Was bei seal in wall W/1 kam, von 2026-03-10 08:00:00 bis 2026-03-10 09:00:00 ist nicht erfasst
                    Put on hold: at station BOND | Gesperrt: at station BOND
                    Put on hold: scratched; waits for a look under the lamp | Gesperrt: scratched; waits for a look under the lamp
                    Put on hold: Unit REC R1 was put into it while on hold | Gesperrt: Einheit REC R1 wurde eingebaut, während sie gesperrt war
                    Step S-1 from 2026-03-10 08:00:00 to 2026-03-10 09:00:00 acted on something that is not recorded | Schritt S-1 von 2026-03-10 08:00:00 bis 2026-03-10 09:00:00 wirkte auf etwas, das nicht erfasst ist
                    Finding: Lot A-17 is on hold: at station BOND | Befund: Los A-17 ist gesperrt: at station BOND
                    Signed that it goes on although a rule is broken (lot is not expired, operation bond): tested anew | Ausnahme unterschrieben (Das Los ist verfallen. Arbeitsgang bond): tested anew
                    Nobody composes this | Nobody composes this
                    """)
    void saysInGermanWhatHasAKnownForm(String english, String german) {
        assertThat(interpreter.say(english, Locale.GERMAN)).isEqualTo(german);
    }

    @Test
    void everyFormIsTakenForItself() {
        List<Saying> sayings = Interpreter.sayings();
        assertThat(sayings).hasSizeGreaterThan(150).allSatisfy(saying -> {
            String sentence = ENGLISH.getString(saying.key())
                    .replaceAll("\\{\\d,time}", "2026-03-10 08:00:00")
                    .replaceAll("\\{(\\d)}", "X$1");
            assertThat(sayings.stream()
                            .filter(other -> other.read(sentence).isPresent())
                            .findFirst())
                    .as(sentence)
                    .contains(saying);
        });
    }
}
