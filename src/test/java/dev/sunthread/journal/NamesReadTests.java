package dev.sunthread.journal;

import static dev.sunthread.inbox.KeptLine.NameKind.CONTAINER;
import static dev.sunthread.inbox.KeptLine.NameKind.LOT;
import static dev.sunthread.inbox.KeptLine.NameKind.POSITION;
import static dev.sunthread.inbox.KeptLine.NameKind.UNIT;
import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.inbox.KeptLine.Name;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a line names is found, whether or not the line is whole. */
class NamesReadTests {

    private static final String SPLIT = """
            {"kind":"split","body":{"lot":"A","container":"C1","into":[{"lot":"A1"},{"lot":"A2"}]}""";

    @Test
    void findsLotsOnBothSidesOfAMakingAndTheContainer() {
        assertThat(NamesRead.in(SPLIT + "}"))
                .containsExactlyInAnyOrder(
                        new Name(LOT, "A"), new Name(LOT, "A1"), new Name(LOT, "A2"), new Name(CONTAINER, "C1"));
        assertThat(NamesRead.in("{\"lots\":[\"A\",\"B\"],\"into\":\"AB\"}"))
                .containsExactlyInAnyOrder(new Name(LOT, "A"), new Name(LOT, "B"), new Name(LOT, "AB"));
    }

    @Test
    void findsTheSameInALineThatBrokeOff() {
        assertThat(NamesRead.in(SPLIT)).hasSize(4).contains(new Name(LOT, "A2"), new Name(CONTAINER, "C1"));
        assertThat(NamesRead.in("{\"containers\":[{\"label\":\"C2\"},{\"serial\" : \"R1\",\"position\":\"V1\""))
                .containsExactlyInAnyOrder(new Name(CONTAINER, "C2"), new Name(UNIT, "R1"), new Name(POSITION, "V1"));
    }

    @Test
    void findsUnitsLotsAndPositionsOfRunsCarriersAndRecoveries() {
        assertThat(named("cure-run")).contains("UNIT R000124", "POSITION back");
        assertThat(named("carrier-load")).contains("UNIT R000123", "POSITION A1");
        assertThat(named("test-run")).containsExactlyInAnyOrder("RUN TR-0401", "UNIT R000124");
        assertThat(named("recovery")).containsExactlyInAnyOrder("UNIT W0007", "LOT L-0622");
        assertThat(named("scrap")).containsExactly("UNIT W0007");
        assertThat(named("deviation")).containsExactly("UNIT R000123");
    }

    @Test
    void findsTheLastOneOfALineThatBrokeOff() {
        String line = String.valueOf(EveryKind.examples().get("cure-run"));
        assertThat(words(NamesRead.in(line.substring(0, line.indexOf("issuer")))))
                .containsExactlyInAnyOrder("RUN CR-0088", "UNIT R000124");
    }

    private static List<String> named(String kind) {
        return words(NamesRead.in(String.valueOf(EveryKind.examples().get(kind))));
    }

    private static List<String> words(List<Name> names) {
        return names.stream().map(name -> name.kind() + " " + name.name()).toList();
    }
}
