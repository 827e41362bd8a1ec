package dev.sunthread.genealogy;

import static dev.sunthread.genealogy.Certainty.CERTAIN;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Small histories with lines of which the kind, or what the line is about, can't be read: it may be any that its fields fit. */
class SmallHistoriesOfUnreadableKindsTests extends SmallHistories {

    private static final String R1 = "{'item':'RCV','serial':'r1'}";
    private static final String W1 = "{'item':'WALL','serial':'w1'}";

    @Test
    void aChargeThatBrokeOffBeforeItsPositionMayHaveBeenAnywhere() {
        plant.charge("07:00", "A", "V1");
        keep("{'id':'k','body':{'lot':'B','sta");
        plant.bondAt("10:00", "r1", "V1");
        truth("B", "r1");
    }

    @Test
    void aDischargeThatBrokeOffBeforeItsPositionMayHaveBeenAnywhereAtItsStation() {
        plant.charge("07:00", "A", "V1");
        keep("{'id':'k','body':{'station':'BOND','pos");
        plant.bondAt("10:00", "r1", "V1");
        truth("B", "r1");
    }

    @Test
    void aStepThatBrokeOffBeforeItsLotMayHaveUsedAnyLot() {
        keep("{'id':'k','body':{'operation':'bond','station':'BOND','units':[" + R1
                + "],'uses':[{'item':'ADH','lot':'");
        truth("B", "r1");
    }

    @Test
    void anInstallationLeavesTheChildInItsParent() {
        keep(line("inst?llation", "08:00", "'child':{'unit':" + R1 + "},'parent':" + W1 + ",'position':'1'"));
        glue("10:00", "w1", "B");
        truth("B", "w1", "r1");
    }

    @Test
    void aRemovalAtAPositionOfAStationsNameLeavesTheStayOnlyPossible() {
        install("08:00", "r1", "w1", "V1");
        keep(line("rem?val", "09:00", "'child':{'unit':" + R1 + "},'parent':" + W1 + ",'position':'V1'"));
        glue("10:00", "w1", "A");
        truth("A", "w1");
    }

    @Test
    void aLoadLeavesWhatItNamesOnItsTray() {
        keep(line("carr?er-load", "08:00", "'carrier':'T1','loads':[{'unit':" + R1 + "}]"));
        ovens.cure("09:00", "09:30", "C-1", List.of(), List.of("T1"));
        truthOfRun("C-1", "r1");
    }

    @Test
    void anUnloadLeavesWhatIsOnTheTrayOnlyPossible() {
        plant.say("carrier-load", "08:00", Map.of("carrier", "T1", "loads", List.of(Map.of("unit", unit("r1")))));
        keep(line("carr?er-unload", "08:30", "'carrier':'T1'"));
        ovens.cure("09:00", "09:30", "C-1", List.of(), List.of("T1"));
        plant.say("carrier-unload", "10:00", Map.of("carrier", "T1"));
        assertThat(asked.scope(new Scope.CureRun("C-1")).ever()).doesNotContainValue(CERTAIN);
    }

    @Test
    void aVoidLeavesWhatItTakesBackOnlyPossible() {
        plant.bondWithLot("08:00", "r1", "A");
        keep(line("vo?d", "09:00", "'entry':'" + plant.lastId() + "','why':'wrong'"));
        assertThat(asked.lot("A").ever()).doesNotContainValue(CERTAIN);
    }

    @Test
    void aCorrectionTellsWhatMayHaveBeenInstead() {
        plant.bondWithLot("08:00", "r1", "A");
        keep(line(
                "corr?ction",
                "09:00",
                "'entry':'" + plant.lastId() + "','why':'wrong','body':{'operation':'bond','station':'BOND','units':["
                        + R1 + "],'uses':[{'item':'ADH','lot':'B'}]}"));
        assertThat(asked.lot("A").ever()).doesNotContainValue(CERTAIN);
        truth("B", "r1");
    }

    @Test
    void aLineWithFieldsThatNoKindHasThatMovesAnythingJoinsNothing() {
        keep(line("h?ld", "09:00", "'lot':'A','units':[" + R1 + "],'reason':'crack'"));
        assertThat(asked.lot("A").ever()).isEmpty();
    }

    @Test
    void aLineJoinsOnlyWhatTheKindsOfItsFieldsDo() {
        plant.bondWithLot("08:00", "r1", "A");
        plant.bondWithLot("10:00", "r2", "B");
        keep(line(
                "st?p",
                "09:00",
                "'operation':'bond','station':'BOND','units':[" + R1 + "],'uses':[{'item':'ADH','lot':'B'}]"));
        assertThat(asked.lot("A").ever()).isEqualTo(Map.of("r1", CERTAIN));
    }

    /** There is no V9: truly it was V1. */
    @Test
    void aChargeAtAMistypedPositionMayHaveBeenAtAnyOfItsStation() {
        plant.charge("07:00", "A", "V1");
        keep(line("charge", "09:00", "'station':'BOND','position':'V9','lot':'B'"));
        plant.bondAt("10:00", "r1", "V1");
        truth("B", "r1");
    }

    /** Nor is there a station BONT. */
    @Test
    void aChargeAtAMistypedStationAndPositionMayHaveBeenAnywhere() {
        plant.charge("07:00", "A", "V1");
        keep(line("charge", "09:00", "'station':'BONT','position':'V9','lot':'B'"));
        plant.bondAt("10:00", "r1", "V1");
        truth("B", "r1");
    }

    /** Only another station has a V9: either was mistyped. */
    @Test
    void aChargeAtAPositionThatOnlyAnotherStationHasMayHaveBeenAtBoth() {
        plant.station("LATE", "10", "V9");
        plant.charge("07:00", "A", "V1");
        keep(line("charge", "09:00", "'station':'BOND','position':'V9','lot':'B'"));
        plant.bondAt("10:00", "r1", "V1");
        truth("B", "r1");
    }

    @Test
    void aStepAtAMistypedPositionMayHaveDrawnFromAnyOfItsStation() {
        plant.charge("07:00", "A", "V1");
        keep(line(
                "step",
                "09:00",
                "'operation':'bond','station':'BOND','units':[" + R1 + "],'uses':[{'item':'ADH','position':'V9'}]"));
        truth("A", "r1");
    }

    private static String line(String kind, String time, String body) {
        return "{'id':'k','kind':'" + kind + "','version':1,'occurredAt':'2026-03-10T" + time
                + ":00+01:00','actor':'o','source':'s','body':{" + body + ",'x':1}}";
    }
}
