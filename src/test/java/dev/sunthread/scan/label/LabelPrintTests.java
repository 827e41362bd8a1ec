package dev.sunthread.scan.label;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.sunthread.kernel.Refused;
import dev.sunthread.kernel.UnitId;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

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
    void aLongNameIsHeldAsItIs(Symbology symbology) throws Exception {
        Label label =
                new Label(LabelCode.lot("LOT-" + "x".repeat(20)), "Größe-Ω-\u4e2d", "LOT-" + "x".repeat(20), List.of());
        assertThat(PrintedCode.ofSvg(LabelSvg.of(label, SHEET, symbology), SHEET))
                .isEqualTo(label.code());
        assertThat(LabelSheets.pdf(List.of(label), SHEET, symbology, 0)).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"Größe", "R\u00a00001", "Ω-1", "\u4e2d", "R\ud83d\ude00", "a\u0301"})
    void aCodeWithLettersThatReadersSendDifferentlyIsNotPrinted(String name) {
        Label label = new Label(LabelCode.lot(name), "lot", "x", List.of());
        assertThatThrownBy(() -> LabelSvg.of(label, SHEET, Symbology.QR))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("readers send differently");
        assertThatThrownBy(() -> LabelSheets.pdf(List.of(unit(name)), SHEET, Symbology.DATA_MATRIX, 0))
                .isInstanceOf(Refused.class);
    }

    static Stream<Arguments> sizesAndNames() {
        LabelSize small = new LabelSize("small", 30, 12, new LabelSize.Sheet(30, 12, 1, 1, 0, 0, 0, 0));
        LabelSize middle =
                new LabelSize("middle", 38.1, 21.2, new LabelSize.Sheet(210, 297, 5, 13, 4.75, 10.7, 40.6, 21.2));
        return Stream.of(small, middle, ROLL, SHEET)
                .flatMap(size -> Stream.of("A-17", "RC-00042", "W".repeat(24), "x".repeat(60))
                        .map(name -> Arguments.of(size, name)));
    }

    @ParameterizedTest
    @MethodSource("sizesAndNames")
    void theNameIsTheLargestTextAndAllOfItFits(LabelSize size, String name) throws Exception {
        Label label =
                new Label("x", "Klebstofflos", name, List.of("GLUE-100-LONG", "verf\u00e4llt 2027-11-30 23:59:59"));
        Layout layout = Layout.of(label, size, Symbology.DATA_MATRIX);
        List<Layout.Text> texts = layout.texts();
        String nameLines = texts.subList(1, texts.size() - 2).stream()
                .map(Layout.Text::text)
                .collect(Collectors.joining());
        assertThat(nameLines).isEqualTo(name);
        double ofName = texts.get(1).size();
        for (Layout.Text text : List.of(texts.get(0), texts.get(texts.size() - 2), texts.get(texts.size() - 1))) {
            assertThat(text.size()).isLessThan(ofName);
        }
        try (PDDocument document = new PDDocument()) {
            PDFont font = PdfPen.font(document);
            for (Layout.Text text : texts) {
                double width = font.getStringWidth(text.text()) / 1000 * text.size();
                assertThat(text.x() + width).as(text.text()).isLessThanOrEqualTo(size.width());
                // letters with tails reach below their line by about a fifth of their size
                assertThat(text.y() + 0.21 * text.size()).as(text.text()).isLessThanOrEqualTo(size.height());
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void noModuleIsFinerThanTheStatedMinimum(Symbology symbology) {
        int refused = 0;
        for (int length = 1; length < 60; length++) {
            try {
                Layout layout = Layout.of(unit("x".repeat(length)), ROLL, symbology);
                assertThat(layout.module()).isGreaterThanOrEqualTo(Layout.SMALLEST_MODULE);
            } catch (Refused e) {
                refused++;
            }
        }
        assertThat(refused).isLessThan(59);
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
