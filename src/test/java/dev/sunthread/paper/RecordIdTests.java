package dev.sunthread.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.sunthread.kernel.Refused;
import dev.sunthread.scan.label.LabelCode;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The ids of records on paper: short, typed, and noticed when mistyped. */
class RecordIdTests {

    private static final String CHARACTERS = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";

    @Test
    void checksAsTheStandardDoes() {
        // ISO/IEC 7064 MOD 37,36, worked example of the Global Release Identifier's handbook, from memory:
        // A1-2425G-ABC1234002-M
        assertThat(CheckCharacter.of("A12425GABC1234002")).isEqualTo('M');
        // ISO/IEC 7064 MOD 37,36, the null text: nothing carried, so that (36 + check) mod 36 = 1
        assertThat(CheckCharacter.of("")).isEqualTo('1');
    }

    @Test
    void noticesEveryWrongCharacter() {
        for (RecordId id : RecordId.first(RecordId.sheetCode(new Random(7)), 60)) {
            String text = id.text().replace("-", "");
            for (int at = 0; at < text.length(); at++) {
                for (char other : CHARACTERS.toCharArray()) {
                    String wrong = text.substring(0, at) + other + text.substring(at + 1);
                    if (!wrong.equals(text)) {
                        assertThatThrownBy(() -> RecordId.read(wrong)).isInstanceOf(Refused.class);
                    }
                }
            }
        }
    }

    @Test
    void hasNoCharacterThatIsEasilyTakenForAnother() {
        List<RecordId> ids = RecordId.first(RecordId.sheetCode(new Random(3)), 60);
        assertThat(ids).doesNotHaveDuplicates().hasSize(60);
        assertThat(ids).extracting(RecordId::text).allMatch(text -> !text.matches(".*[01ILO].*"));
    }

    @Test
    void isReadAsTypedAndAsScanned() {
        RecordId id = RecordId.first("7K3QM", 1).get(0);
        String text = id.text();
        assertThat(RecordId.read(text.toLowerCase(java.util.Locale.ROOT).replace("-", " ")))
                .isEqualTo(id);
        assertThat(RecordId.read(LabelCode.paper(text))).isEqualTo(id);
        // as a scanner that types sends it, with pictures for the separators
        assertThat(RecordId.read("[)>\u241e06\u241dZpaper " + text + "\u241e\u2404"))
                .isEqualTo(id);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "7K3QM", "R-0001", "7K3QM-O4-C", "7K3QM-24-RC"})
    void saysOfAnythingElseThatItIsNone(String typed) {
        assertThatThrownBy(() -> RecordId.read(typed))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("no id of a record on paper");
    }
}
