package dev.sunthread.scan.parse;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.scan.gs1.CheckDigit;
import dev.sunthread.scan.gs1.ElementString;
import dev.sunthread.scan.meaning.Meaning;
import dev.sunthread.scan.meaning.Thing;
import java.math.BigDecimal;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** GS1 element strings and check digits. */
class ElementStringTests {

    @ParameterizedTest
    @CsvSource({
        // GS1 check digit calculation, table reprinted by IBM: 629104150021 has 3
        "629104150021, 3",
        // GS1 India, how a check digit is calculated
        "890400021003, 7",
        // GS1 Sweden, kontrollsiffra
        "730001100001, 7",
        // GS1 UK example number; the digit recomputed
        "501234567890, 0",
        // GS1, example of a GTIN-14
        "4098765000022, 3",
        // gs1-syntax-engine at 50657dbd, tests that put a wrong check digit right: 24012345678909 ends with 5
        "2401234567890, 5",
        "211223378965, 7",
        "41600033610, 8",
        "0234568, 0"
    })
    void givesTheCheckDigit(String digits, char check) {
        assertThat(CheckDigit.of(digits)).isEqualTo(check);
    }

    // gs1-syntax-dictionary at ff2eb4bf, src/lint_csum.c
    @ParameterizedTest
    @CsvSource({
        "02345673, 12345673",
        "416000336108, 416000336109",
        "1234567890128, 1234567890129",
        "12345678901231, 12345678901232",
        "123456789012345675, 123456789012345670"
    })
    void knowsARightCheckDigitFromAWrongOne(String right, String wrong) {
        assertThat(CheckDigit.isRight(right)).isTrue();
        assertThat(CheckDigit.isRight(wrong)).isFalse();
    }

    @ParameterizedTest
    @CsvSource({
        // gs1-syntax-engine at 50657dbd, tests of bracketed and unbracketed data; ^ stands for FNC1
        "^01123456789012311012345, 01=12345678901231 10=12345",
        "^31001234561012345, 3100=123456 10=12345",
        "^1012345^11991225, 10=12345 11=991225",
        "^0112345678901231235XYZ^10BATCH, 01=12345678901231 235=XYZ 10=BATCH",
        "^0112345678901231^991234, 01=12345678901231 99=1234",
        "^242123456^10ABC123, 242=123456 10=ABC123",
        "^10ABC123^, 10=ABC123",
        "(01)12345678901231(10)12345, 01=12345678901231 10=12345"
    })
    void readsElements(String text, String elements) {
        assertThat(Read.pairs(Read.sure(text).elements())).isEqualTo(elements);
    }

    // gs1-syntax-engine at 50657dbd, tests of data that is refused
    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "^891234",
                "^0112345678901234",
                "^01123456789012345^",
                "^99~ABC",
                "(10)(11)98765",
                "(17)9(90)217",
                "^2421234567"
            })
    void leavesUnreadWithAReasonWhatIsWrong(String text) {
        var scanned = Read.scanned(text);
        assertThat(scanned.sure()).isEmpty();
        assertThat(scanned.readings().get(0).isWhole()).isFalse();
        assertThat(scanned.readings().get(0).remarks()).isNotEmpty();
    }

    // gs1-syntax-engine at 50657dbd: data without its leading FNC1 is refused; here it is offered, and never taken
    @Test
    void takesNoDigitsForAnElementStringUnasked() {
        var scanned = Read.scanned("0112345678901231");
        assertThat(scanned.sure()).isEmpty();
        assertThat(scanned.readings()).extracting(reading -> reading.thing()).containsExactly(Thing.NAME, Thing.ITEM);
    }

    @ParameterizedTest
    @CsvSource({
        // gs1-syntax-dictionary at ff2eb4bf, src/lint_yymmd0.c
        "200229, true",
        "210229, false",
        "000229, true",
        "200600, true",
        "201310, false",
        "200431, false",
        "200132, false"
    })
    void knowsADayFromNone(String day, boolean exists) {
        assertThat(Read.scanned("^17" + day).readings().get(0).isWhole()).isEqualTo(exists);
    }

    @ParameterizedTest
    @CsvSource({
        // GS1 General Specifications 7.12, from memory: 51 to 99 ahead is the century before, 50 to 99 behind the next
        "261107, 2026-11-07",
        "760101, 2076-01-01",
        "770101, 1977-01-01",
        // GS1 General Specifications, from memory: day 00 is the last of the month
        "280200, 2028-02-29",
    })
    void tellsTheDayOfSixDigits(String day, LocalDate expected) {
        assertThat(Read.sure("^17" + day).all(Meaning.EXPIRY).get(0).date()).isEqualTo(expected);
    }

    // gs1-syntax-dictionary at ff2eb4bf, src/lint_csumalpha.c
    @Test
    void checksAModelNumber() {
        assertThat(Read.sure("(8013)1987654Ad4X4bL5ttr2310c2K").isWhole()).isTrue();
        assertThat(Read.scanned("(8013)1987654Ad4X4bL5ttr2310cXK").sure()).isEmpty();
        assertThat(Read.scanned("(8013)1987654Ad4X4bL5ttr2310c2X").sure()).isEmpty();
    }

    // gs1-syntax-dictionary at ff2eb4bf: 310n is a net weight in kilograms with n decimals
    @Test
    void tellsAWeightWithItsDecimals() {
        var amount = Read.amount(Read.sure("^3103001250"));
        assertThat(amount.number()).isEqualTo(new BigDecimal("1.250"));
        assertThat(amount.unit()).isEqualTo("KGM");
    }

    @Test
    void keepsCaseLeadingNoughtsAndRepeatedIdentifiers() {
        assertThat(Read.first("^10a0B^10007")).isEqualTo("10=a0B 10=007");
        assertThat(Read.scanned("^10a0B^10007")
                        .readings()
                        .get(0)
                        .remarks()
                        .get(0)
                        .words())
                .isEqualTo("10 is there more than once; all are kept");
    }

    @Test
    void offersEveryWayToReadALostSeparator() {
        assertThat(Read.scanned("011234567890123110ABC21XYZ").readings())
                .extracting(reading -> Read.pairs(reading.elements()))
                .contains("01=12345678901231 10=ABC21XYZ", "01=12345678901231 10=ABC 21=XYZ");
        assertThat(Read.scanned("011234567890123110ABC21XYZ").sure()).isEmpty();
    }

    @Test
    void writesWhatItReads() {
        String text = Read.exact("<GS>0112345678901231235XYZ<GS>10BATCH");
        assertThat(ElementString.write(ElementString.read(text, 2026).elements()))
                .isEqualTo(text);
    }
}
