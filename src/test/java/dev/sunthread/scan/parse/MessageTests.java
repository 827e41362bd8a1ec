package dev.sunthread.scan.parse;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.scan.meaning.Meaning;
import dev.sunthread.scan.meaning.Reading;
import dev.sunthread.scan.meaning.Remark;
import dev.sunthread.scan.meaning.Thing;
import dev.sunthread.scan.meaning.Why;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Messages of ISO/IEC 15434 with data identifiers of ANSI MH10.8.2, and the ways they come damaged. */
class MessageTests {

    private static final String HEADER = "[)><RS>06<GS>";

    @ParameterizedTest
    @CsvSource({
        // example of an item mark in public notes on MIL-STD-130
        "17V98897<GS>1P4L0014-163B<GS>SSA10197, 17V=98897 1P=4L0014-163B S=SA10197",
        // questions on reading item marks, printed in public code: the order of fields does not matter
        "1P3TN01414BA<GS>SALCLB4923FA8, 1P=3TN01414BA S=ALCLB4923FA8",
        "SALCLB4923FA8<GS>1P3TN01414BA, S=ALCLB4923FA8 1P=3TN01414BA",
        // label of parts combined in public code
        "P40217372<GS>1T20347[0000], P=40217372 1T=20347[0000]"
    })
    void readsTheFields(String fields, String expected) {
        assertThat(Read.pairs(Read.sure(HEADER + fields + "<RS><EOT>").elements()))
                .isEqualTo(expected);
    }

    @Test
    void readsADeliveryLabel() {
        // form of a distributor's label in public code: order, line, part, quantity, packing list, origin, maker
        Reading label = Read.sure(
                HEADER + "K4500016605<GS>14K008<GS>PPWR220T-20<GS>Q5<GS>11K086036559<GS>4LCR<GS>1VMaker<RS><EOT>");
        assertThat(label.value(Meaning.ITEM)).contains("PWR220T-20");
        assertThat(label.value(Meaning.ORDER)).contains("4500016605");
        assertThat(Read.amount(label).number()).isEqualByComparingTo("5");
        assertThat(label.value(Meaning.ORIGIN)).contains("CR");
    }

    @Test
    void readsAFormatOfGs1() {
        // ISO/IEC 15434: format 05 holds application identifiers, fields end with GS
        assertThat(Read.pairs(Read.sure("[)><RS>05<GS>011234567890123110A7<GS>17261107<RS><EOT>")
                        .elements()))
                .isEqualTo("01=12345678901231 10=A7 17=261107");
    }

    @Test
    void keepsAnEmptyFieldAndPassesOverASeparatorAtTheEnd() {
        // automotive pattern in public code: an empty serial and a separator behind the last field are legal there
        Reading label = Read.sure(HEADER + "V123<GS>PABC<GS>S<GS>TL7<GS><RS><EOT>");
        assertThat(Read.pairs(label.elements())).isEqualTo("V=123 P=ABC S= T=L7");
        assertThat(label.remarks()).containsExactly(new Remark(Why.EMPTY_FIELD, "S"));
    }

    @Test
    void keepsBothLotsOfASplitReel() {
        assertThat(Read.sure(HEADER + "1PX<GS>1TA<GS>1TB<RS><EOT>").values(Meaning.SUPPLIER_LOT))
                .containsExactly("A", "B");
    }

    @Test
    void takesTheLongestIdentifier() {
        assertThat(Read.pairs(Read.sure(HEADER + "PA<GS>1PB<GS>2PC<GS>30PD<GS>KE<GS>4KF<RS><EOT>")
                        .elements()))
                .isEqualTo("P=A 1P=B 2P=C 30P=D K=E 4K=F");
    }

    @Test
    void joinsAValueWithASeparatorInsideAndSaysSo() {
        Reading label =
                Read.scanned(HEADER + "1PAB<GS>-12<GS>1TX<RS><EOT>").readings().get(0);
        assertThat(label.value(Meaning.SUPPLIER_ITEM)).contains(Read.exact("AB<GS>-12"));
        assertThat(label.isSure()).isFalse();
    }

    @Test
    void readsOnBehindStrayCharacters() {
        Reading label = Read.sure(">" + HEADER + "1PX<RS><EOT>");
        assertThat(label.remarks()).containsExactly(Remark.of(Why.STRAY_CHARACTERS));
    }

    @ParameterizedTest
    @ValueSource(strings = {"06<GS>1PX<GS>1TY<RS><EOT>", "<RS>06<GS>1PX<GS>1TY", "<GS>1PX<GS>1TY<RS>", "1PX<GS>1TY"})
    void readsAfterACroppedHeaderButNotSurely(String text) {
        assertThat(Read.first(text)).isEqualTo("1P=X 1T=Y");
        assertThat(Read.scanned(text).sure()).isEmpty();
    }

    @Test
    void readsWithoutItsEndAndSaysSo() {
        Reading label = Read.sure(HEADER + "1PX<GS>1TY");
        assertThat(Read.pairs(label.elements())).isEqualTo("1P=X 1T=Y");
        assertThat(label.remarks()).containsExactly(Remark.of(Why.CROPPED_END));
    }

    // texts that scanners send instead of the control characters
    @ParameterizedTest
    @CsvSource({"{GS}, {RS}, {EOT}", "^], ^^, ^D", "\\x1d, \\x1e, \\x04", "\u241d, \u241e, \u2404"})
    void readsSeparatorsShownAsText(String gs, String rs, String eot) {
        String text = "[)>" + rs + "06" + gs + "1PX" + gs + "Q5" + rs + eot;
        assertThat(Read.pairs(Read.sure(text).elements())).isEqualTo("1P=X Q=5");
    }

    @Test
    void readsSeparatorsShownInAngleBrackets() {
        Reading label = new ScanParser(List.of(), 2026)
                .read("[)><RS>06<GS>1PX<GS>Q5<RS><EOT>")
                .sure()
                .orElseThrow();
        assertThat(label.remarks()).containsExactly(Remark.of(Why.SEPARATORS_AS_TEXT));
    }

    @Test
    void offersTheWaysToReadAMessageWithoutSeparators() {
        var scanned = Read.scanned("[)>06P40217372Q5001TLOT7");
        assertThat(scanned.readings())
                .extracting(reading -> Read.pairs(reading.elements()))
                .contains("P=40217372 Q=500 1T=LOT7");
        assertThat(scanned.sure()).isEmpty();
    }

    @Test
    void tellsExpiryAndQuantityWithItsUnit() {
        // ANSI MH10.8.2, from memory: 14D is YYYYMMDD, 7Q ends with a unit of two characters
        Reading label = Read.sure(HEADER + "14D20261107<GS>7Q2.5KG<RS><EOT>");
        assertThat(label.all(Meaning.EXPIRY).get(0).date()).isEqualTo(LocalDate.of(2026, 11, 7));
        assertThat(Read.amount(label).unit()).isEqualTo("KG");
        assertThat(Read.scanned(HEADER + "14D20261307<RS><EOT>").sure()).isEmpty();
    }

    @Test
    void leavesOtherFormatsUnread() {
        assertThat(Read.scanned("[)><RS>12<GS>SER 1<RS><EOT>").isUnread()).isTrue();
        assertThat(Read.scanned("[)>").isUnread()).isTrue();
    }

    @Test
    void doubtsAnUnknownIdentifierAndKeepsIt() {
        var scanned = Read.scanned(HEADER + "1PX<GS>99Yabc<RS><EOT>");
        assertThat(scanned.sure()).isEmpty();
        assertThat(scanned.readings().get(0).thing()).isEqualTo(Thing.ITEM);
        assertThat(Read.pairs(scanned.readings().get(0).elements())).isEqualTo("1P=X 99Y=abc");
    }
}
