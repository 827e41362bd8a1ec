package dev.sunthread.journal;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.inbox.KeptLine.Name;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a line names is found by its fields, whatever its kind. */
class NamesReadTests {

    @Test
    void findsUnitsLotsAndPositionsOfRunsCarriersAndRecoveries() {
        assertThat(named("cure-run")).contains("UNIT R000124", "POSITION back");
        assertThat(named("carrier-load")).contains("UNIT R000123", "POSITION A1");
        assertThat(named("test-run")).containsExactly("UNIT R000124");
        assertThat(named("recovery")).containsExactlyInAnyOrder("UNIT W0007", "LOT L-0622");
        assertThat(named("scrap")).containsExactly("UNIT W0007");
        assertThat(named("deviation")).containsExactly("UNIT R000123");
    }

    @Test
    void findsThemInALineThatBrokeOff() {
        String line = String.valueOf(EveryKind.examples().get("cure-run"));
        assertThat(words(NamesRead.in(line.substring(0, line.indexOf("issuer")))))
                .containsExactly("UNIT R000124");
    }

    private static List<String> named(String kind) {
        return words(NamesRead.in(String.valueOf(EveryKind.examples().get(kind))));
    }

    private static List<String> words(List<Name> names) {
        return names.stream().map(name -> name.kind() + " " + name.name()).toList();
    }
}
