package dev.sunthread.scan.label;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.kernel.UnitId;
import dev.sunthread.scan.meaning.Meaning;
import dev.sunthread.scan.meaning.Reading;
import dev.sunthread.scan.meaning.Thing;
import dev.sunthread.scan.parse.ScanParser;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the plant's own codes hold is read as what it is, whatever the names are. */
class LabelCodeTests {

    private static Reading read(String code) {
        return new ScanParser(List.of(), 2026).read(code).sure().orElseThrow();
    }

    @Test
    void aUnitIsReadWithItemSerialAndIssuer() {
        Reading unit = read(LabelCode.unit(UnitId.of("Sister Plant", "RCV-100", "1TLOT")));
        assertThat(unit.thing()).isEqualTo(Thing.UNIT);
        assertThat(unit.value(Meaning.ITEM)).contains("RCV-100");
        assertThat(unit.value(Meaning.SERIAL)).contains("1TLOT");
        assertThat(unit.value(Meaning.SUPPLIER)).contains("Sister Plant");
    }

    @Test
    void everyKindIsReadAsWhatItIs() {
        assertThat(read(LabelCode.lot("A-17")).thing()).isEqualTo(Thing.LOT);
        assertThat(read(LabelCode.container("A-17")).thing()).isEqualTo(Thing.CONTAINER);
        assertThat(read(LabelCode.carrier("A-17")).thing()).isEqualTo(Thing.CARRIER);
        assertThat(read(LabelCode.station("A-17")).thing()).isEqualTo(Thing.STATION);
        assertThat(read(LabelCode.position("BOND", "V1")).thing()).isEqualTo(Thing.POSITION);
        assertThat(read(LabelCode.badge("A-17")).thing()).isEqualTo(Thing.BADGE);
        assertThat(read(LabelCode.command("undo")).value(Meaning.COMMAND)).contains("undo");
    }
}
