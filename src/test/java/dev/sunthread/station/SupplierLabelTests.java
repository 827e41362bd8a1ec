package dev.sunthread.station;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.ledger.Door;
import dev.sunthread.scan.label.LabelCode;
import dev.sunthread.station.Verdict.Outcome;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

/** What labels of suppliers name at a station; the codes are of the forms that {@code ScansTests} checks. */
@SunthreadTest
class SupplierLabelTests {

    @Autowired
    Door door;

    @Autowired
    Bench bench;

    @Autowired
    JdbcClient jdbc;

    private ShopFloor floor;
    private int scans;

    @BeforeEach
    void release() {
        floor = ShopFloor.released(door);
        Map<String, Object> item = new TreeMap<>(Map.of("item", "TIM", "revision", "B", "name", "Adhesive"));
        item.putAll(Map.of("tracking", "lot", "unitOfMeasure", "g", "labelNumbers", List.of("09521234543213")));
        floor.plant().say("item", "1 01:00", item);
        floor.plant().receipt("07:00", "A-7", "TIM", "LF-7741");
    }

    private Verdict scan(String text) {
        return bench.scan("GLUE", "op-01", new Scan("s-" + ++scans, text, Plant.at("09:%02d".formatted(scans)), false));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "]d2010952123454321310LF-7741",
                "(01)09521234543213(10)LF-7741",
                "https://id.example/01/09521234543213/10/LF-7741",
                "urn:epc:class:lgtin:9521234.054321.LF-7741",
                "]C110LF-7741",
                "[)>\u001e06\u001dPTIM\u001d1TLF-7741\u001e\u0004",
                "]C01TLF-7741",
                "1TLF-7741"
            })
    void aSuppliersLotIsFoundInEveryFormOfItsLabel(String text) {
        assertThat(scan(text).said()).isEqualTo(Say.of("material.which-position", "A-7"));
    }

    @Test
    void aSuppliersLotBehindSeveralReceiptsIsAskedAbout() {
        floor.plant().receipt("07:00", "A-8", "TIM", "LF-7741");
        Verdict asked = scan("]C01TLF-7741");
        assertThat(asked.outcome()).isEqualTo(Outcome.ASKED);
        assertThat(asked.choices())
                .extracting(Verdict.Choice::said)
                .containsExactly(Say.of("which.lot", "A-7"), Say.of("which.lot", "A-8"));
        assertThat(scan(".2").said()).isEqualTo(Say.of("material.which-position", "A-8"));
    }

    @Test
    void aLabelOfAnotherItemDoesNotNameALotThatHasTheSameNumber() {
        assertThat(scan("[)>\u001e06\u001dPCC\u001d1TLF-7741\u001e\u0004").said())
                .isEqualTo(Say.of("read.supplier-lot", "LF-7741"));
    }

    @Test
    void whatIsUnderstoodButUnknownSaysSo() {
        assertThat(scan("]C01TZZ-9").said()).isEqualTo(Say.of("read.supplier-lot", "ZZ-9"));
        assertThat(scan("(01)09521234543213(10)ZZ-9").said()).isEqualTo(Say.of("read.supplier-lot", "ZZ-9"));
        assertThat(scan("(01)09521234543213").said()).isEqualTo(Say.of("read.item", "09521234543213"));
        assertThat(scan(LabelCode.lot("ZZ-9")).said()).isEqualTo(Say.of("read.lot", "ZZ-9"));
        assertThat(scan(LabelCode.position("GLUE", "V9")).said().key()).isEqualTo("read.position");
        assertThat(scan(LabelCode.badge("op-7")).said().key()).isEqualTo("read.badge");
        assertThat(scan("no such").said().key()).isEqualTo("unknown");
    }

    @Test
    void aSerialOfAnItemThatComesInLotsIsNoNewUnit() {
        assertThat(scan("[)>\u001e06\u001dPTIM\u001dS0815\u001e\u0004").said()).isEqualTo(Say.of("read.unit", "0815"));
        assertThat(scan("[)>\u001e06\u001dPTIM\u001dS0815\u001d1TLF-7741\u001e\u0004")
                        .said())
                .isEqualTo(Say.of("material.which-position", "A-7"));
    }

    @Test
    void noNameOfAFieldReachesThePage() {
        scan(".ship");
        assertThat(scan("a consignee ".repeat(50)).said().key()).isEqualTo("ship.no-consignee");
        scan(".cancel");
        scan("[)>\u001e06\u001dPREC\u001dS" + "9".repeat(70) + "\u001e\u0004");
        assertThat(scan(".1").said().key()).isEqualTo("cannot");
        assertThat(jdbc.sql("SELECT count(*) FROM station.scan WHERE verdict::text LIKE '%body.%'")
                        .query(Integer.class)
                        .single())
                .isZero();
    }
}
