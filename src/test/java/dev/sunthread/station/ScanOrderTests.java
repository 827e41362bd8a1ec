package dev.sunthread.station;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.ledger.Door;
import dev.sunthread.station.contact.ScanOrder;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import java.time.OffsetDateTime;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** Quick scans stay in their order however long each was on its way. */
@SunthreadTest
class ScanOrderTests {

    private static final OffsetDateTime AT = Plant.at("09:00");

    @Autowired
    Door door;

    @Autowired
    Bench bench;

    @Autowired
    ScanOrder order;

    @BeforeEach
    void firstScan() {
        ShopFloor.released(door);
        bench.scan("GLUE", "op-1", new Scan("first", "A-1", AT, false));
    }

    private OffsetDateTime ordered(String id, OffsetDateTime at) {
        return order.behindTheLast("GLUE", "op-1", new Scan(id, "V1", at, true)).at();
    }

    @Test
    void aScanThatSeemsALittleEarlierIsPutBehindTheOneBefore() {
        assertThat(ordered("second", AT.minusSeconds(1))).isAfter(AT).isBefore(AT.plusSeconds(1));
    }

    @Test
    void aScanThatIsSentAgainOrIsLongPastKeepsItsTime() {
        assertThat(ordered("first", AT.minusSeconds(1))).isEqualTo(AT.minusSeconds(1));
        assertThat(ordered("second", AT.minusHours(1))).isEqualTo(AT.minusHours(1));
        assertThat(ordered("second", AT.plusSeconds(1))).isEqualTo(AT.plusSeconds(1));
    }

    @Test
    void aScanIsBehindEveryEarlierOneOfItsPageHoweverLongPastItSeems() {
        UUID page = UUID.randomUUID();
        bench.scan("GLUE", "op-1", new Scan("first-of-page", "A-1", AT, true, new Scan.Place(page, 7)));
        Scan seemsEarlier = new Scan("second-of-page", "V1", AT.minusHours(20), true, new Scan.Place(page, 8));
        assertThat(order.behindTheLast("GLUE", "op-2", seemsEarlier).at())
                .isAfter(AT)
                .isBefore(AT.plusSeconds(1));
        Scan ofAnother = new Scan("other", "V1", AT.minusHours(20), true, new Scan.Place(UUID.randomUUID(), 8));
        assertThat(order.behindTheLast("GLUE", "op-2", ofAnother)).isEqualTo(ofAnother);
    }
}
