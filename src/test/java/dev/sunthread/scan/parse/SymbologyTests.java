package dev.sunthread.scan.parse;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.scan.meaning.Thing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Symbology identifiers and plain texts. */
class SymbologyTests {

    @ParameterizedTest
    @CsvSource({
        // gs1-syntax-engine at 50657dbd, tests of scan data
        "]d2011231231231233310ABC123<GS>99TESTING, 01=12312312312333 10=ABC123 99=TESTING",
        "]C10112345678901231, 01=12345678901231",
        "]e00112345678901231, 01=12345678901231",
        "]Q30112345678901231, 01=12345678901231",
        "]J10112345678901231, 01=12345678901231",
        "]Q1https://example.com/01/12312312312333?99=TEST, 01=12312312312333 99=TEST",
        "]E02112345678900, 01=02112345678900",
        "]E402345673, 01=00000002345673",
        // ISO/IEC 15424, from memory: I1 is interleaved two of five with a check digit
        "]I112345678901231, 01=12345678901231"
    })
    void readsByTheSymbology(String text, String elements) {
        assertThat(Read.pairs(Read.sure(text).elements())).isEqualTo(elements);
    }

    // gs1-syntax-engine at 50657dbd, tests of scan data that is refused
    @ParameterizedTest
    @ValueSource(strings = {"]d2", "]Q3", "]C1", "]XX", "]E02112345678901", "]d1https://example.com/"})
    void leavesUnreadWhatTheSymbologyDoesNotHold(String text) {
        assertThat(Read.scanned(text).isUnread()).isTrue();
        assertThat(Read.scanned(text).readings().get(0).remarks()).isNotEmpty();
    }

    @Test
    void readsASerialByTheItemsPattern() {
        assertThat(Read.sure("RC-00042").thing()).isEqualTo(Thing.UNIT);
        assertThat(Read.first("]d1RC-00042\r\n")).isEqualTo("=RCV-100 =RC-00042");
    }

    @ParameterizedTest
    @ValueSource(strings = {"RC-0042", "rc-00042", "RC-OO042", "TRAY-01", "A ^D name", "Größe 7"})
    void takesAnyOtherTextForANameAsItIs(String text) {
        assertThat(Read.scanned(text).isName()).isTrue();
        assertThat(Read.sure(text).elements().get(0).value()).isEqualTo(text);
    }

    @Test
    void offersAFieldOfALinearCodeBesideItsPlainText() {
        assertThat(Read.scanned("]A0Q500").readings())
                .extracting(reading -> reading.thing())
                .containsExactly(Thing.NAME, Thing.QUANTITY);
        assertThat(Read.scanned("1TLF-7736").readings())
                .extracting(reading -> reading.thing())
                .containsExactly(Thing.NAME, Thing.SUPPLIER_LOT);
    }
}
