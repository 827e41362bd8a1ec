package dev.sunthread.scan.label;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.sunthread.kernel.Refused;
import dev.sunthread.kernel.UnitId;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Printed labels, read back by another library than the one that drew them. */
class LabelPrintTests {

    private static final LabelSize ROLL = new LabelSize("roll", 50, 25, new LabelSize.Sheet(50, 25, 1, 1, 0, 0, 0, 0));
    private static final LabelSize SHEET =
            new LabelSize("sheet", 70, 37, new LabelSize.Sheet(210, 297, 3, 8, 0, 0.5, 70, 37));

    private static Label unit(String serial) {
        UnitId id = UnitId.of(null, "RCV-100", serial);
        return new Label(LabelCode.unit(id), "receiver", serial, List.of("RCV-100"));
    }

    @ParameterizedTest
    @EnumSource
    void aDrawnLabelHoldsItsCode(Symbology symbology) throws Exception {
        Label label = unit("RC-00042");
        assertThat(PrintedCode.ofSvg(LabelSvg.of(label, ROLL, symbology), ROLL)).isEqualTo(label.code());
    }

    @ParameterizedTest
    @EnumSource
    void aSheetHoldsEveryLabelInItsPlace(Symbology symbology) throws Exception {
        List<Label> labels =
                IntStream.range(0, 25).mapToObj(n -> unit("RC-0004" + n)).toList();
        byte[] pdf = LabelSheets.pdf(labels, SHEET, symbology, 2);
        assertThat(PrintedCode.ofPdf(pdf, 0, SHEET, 140, 0.5))
                .isEqualTo(labels.get(0).code());
        assertThat(PrintedCode.ofPdf(pdf, 0, SHEET, 70, 37.5))
                .isEqualTo(labels.get(2).code());
        assertThat(PrintedCode.ofPdf(pdf, 1, SHEET, 140, 0.5))
                .isEqualTo(labels.get(24).code());
    }

    @Test
    void aLabelShowsItsTextToPeople() throws Exception {
        byte[] pdf = LabelSheets.pdf(List.of(unit("RC-00042")), ROLL, Symbology.DATA_MATRIX, 0);
        try (var document = Loader.loadPDF(pdf)) {
            assertThat(new PDFTextStripper().getText(document)).contains("receiver", "RC-00042", "RCV-100");
        }
        assertThat(LabelSvg.of(unit("RC<&>42"), ROLL, Symbology.QR)).contains("RC&lt;&amp;&gt;42");
    }

    @ParameterizedTest
    @EnumSource
    void aLongNameInOtherLettersIsHeldAsItIs(Symbology symbology) throws Exception {
        Label label = new Label(LabelCode.lot("Größe-Ω-" + "x".repeat(20)), "lot", "Größe-Ω-\u4e2d", List.of());
        assertThat(PrintedCode.ofSvg(LabelSvg.of(label, SHEET, symbology), SHEET))
                .isEqualTo(label.code());
        assertThat(LabelSheets.pdf(List.of(label), SHEET, symbology, 0)).isNotEmpty();
    }

    @Test
    void aCodeTooFineToBeReadIsRefused() {
        LabelSize tiny = new LabelSize("tiny", 10, 5, new LabelSize.Sheet(10, 5, 1, 1, 0, 0, 0, 0));
        assertThatThrownBy(() -> LabelSvg.of(unit("RC-00042"), tiny, Symbology.QR))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("too fine to be read");
        Label huge = new Label(String.join("", Collections.nCopies(4000, "x")), "lot", "x", List.of());
        assertThatThrownBy(() -> LabelSvg.of(huge, SHEET, Symbology.QR)).isInstanceOf(Refused.class);
    }

    @Test
    void aSizeThatDoesNotFitItsSheetIsNone() {
        assertThatThrownBy(() -> new LabelSize("x", 70, 37, new LabelSize.Sheet(210, 297, 4, 8, 0, 0, 70, 37)))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
