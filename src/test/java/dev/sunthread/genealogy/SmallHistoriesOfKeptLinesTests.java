package dev.sunthread.genealogy;

import static dev.sunthread.genealogy.Certainty.CERTAIN;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Small histories with lines that could not be read, and with records that come after a question. */
class SmallHistoriesOfKeptLinesTests extends SmallHistories {

    /** The lot could not be read: truly it was B. */
    @Test
    void aChargeWhoseLotIsUnknownMayHaveBeenOfAnyLot() {
        plant.charge("07:00", "A", "V1");
        keep("{'id':'k','kind':'charge','version':1,'occurredAt':'2026-03-10T09:00:00+01:00','actor':'o','source':'s',"
                + "'body':{'station':'BOND','position':'V1','lot':'");
        plant.bondAt("10:00", "r1", "V1");
        truth("B", "r1");
    }

    /** The line broke off within its station: truly B came onto V1. */
    @Test
    void aChargeThatBrokeOffBeforeItsPositionMayHaveBeenAnywhere() {
        plant.charge("07:00", "A", "V1");
        keep("{'id':'k','kind':'charge','version':1,'occurredAt':'2026-03-10T09:00:00+01:00','actor':'o','source':'s',"
                + "'body':{'lot':'B','sta");
        plant.bondAt("10:00", "r1", "V1");
        truth("B", "r1");
    }

    /** The line broke off behind its station: truly A came off V1, and the charge of B behind it is lost. */
    @Test
    void aDischargeThatBrokeOffLeavesWhatIsUsedBehindItOpen() {
        plant.charge("07:00", "A", "V1");
        keep("{'id':'k','kind':'discharge','version':1,'occurredAt':'2026-03-10T09:00:00+01:00','actor':'o',"
                + "'source':'s','body':{'station':'BOND','pos");
        plant.bondAt("10:00", "r1", "V1");
        truth("B", "r1");
    }

    @Test
    void twoKeptLinesAboutAPositionBothCount() {
        receive("D");
        plant.charge("07:00", "A", "V1");
        keep("{'id':'k','kind':'charge','version':1,'occurredAt':'2026-03-10T09:00:00+01:00','actor':'o','source':'s',"
                + "'body':{'station':'BOND','position':'V1','lot':'B','x':1}}");
        keep(
                "{'id':'l','kind':'discharge','version':1,'occurredAt':'2026-03-10T09:30:00+01:00','actor':'o','source':'s',"
                        + "'body':{'station':'BOND','position':'V1','x':1}}");
        plant.bondAt("09:20", "r1", "V1");
        plant.bondAt("10:00", "r2", "V1");
        truth("B", "r1");
        truth("D", "r2");
        assertThat(asked.lot("B").ever()).containsKeys("r2");
    }

    /** A clean point that could not be read ends no carry-over. */
    @Test
    void aCleanPointThatCouldNotBeReadCleansNothing() {
        plant.charge("07:00", "A", "V1");
        plant.charge("08:00", "B", "V1");
        keep("{'id':'k','kind':'clean-point','version':1,'occurredAt':'2026-03-10T08:00:00+01:00','actor':'o',"
                + "'source':'s','body':{'station':'BOND','position':'V1','evid");
        plant.bondAt("10:00", "r1", "V1");
        truth("A", "r1");
    }

    /** The line broke off within the wall's serial; w1 was later put into m1. */
    @Test
    void anInstallationThatBrokeOffBeforeItsParentLeavesTheChildACandidate() {
        places();
        keep("{'id':'k','kind':'installation','version':1,'occurredAt':'2026-03-10T08:00:00+01:00','actor':'o',"
                + "'source':'s','body':{'child':{'unit':{'item':'RCV','serial':'r1'}},'parent':{'item':'WALL','ser");
        glue("09:00", "w1", "A");
        install("10:00", "w1", "m1");
        truth("A", "w1", "r1", "m1");
    }

    /** The line broke off behind the child: r1 was out of w1 when A came. */
    @Test
    void aRemovalThatBrokeOffBehindItsChildLeavesItsStayOnlyPossible() {
        install("08:00", "r1", "w1");
        keep("{'id':'k','kind':'removal','version':1,'occurredAt':'2026-03-10T09:00:00+01:00','actor':'o',"
                + "'source':'s','body':{'child':{'unit':{'item':'RCV','serial':'r1'}},'par");
        glue("10:00", "w1", "A");
        truth("A", "w1");
    }

    /** The line broke off behind the child: r1 was put into w2 by it, and its removal from w1 is lost. */
    @Test
    void anInstallationThatBrokeOffBehindItsChildLeavesTheStayBeforeOnlyPossible() {
        install("08:00", "r1", "w1");
        glue("08:30", "w1", "B");
        keep("{'id':'k','kind':'installation','version':1,'occurredAt':'2026-03-10T09:00:00+01:00','actor':'o',"
                + "'source':'s','body':{'child':{'unit':{'item':'RCV','serial':'r1'}},'par");
        glue("10:00", "w1", "A");
        truth("A", "w1");
        assertThat(asked.lot("B").ever()).containsEntry("r1", CERTAIN);
    }

    /** The line broke off behind the tray: r1 lay on it. */
    @Test
    void aLoadThatBrokeOffBehindItsUnitIsReachedByTheRunOfItsTray() {
        keep("{'id':'k','kind':'carrier-load','version':1,'occurredAt':'2026-03-10T08:00:00+01:00','actor':'o',"
                + "'source':'s','body':{'carrier':'T1','loads':[{'unit':{'item':'RCV','serial':'r1'}},{'unit':{'it");
        ovens.cure("09:00", "09:30", "C-1", List.of(), List.of("T1"));
        truthOfRun("C-1", "r1");
    }

    /** The kind can't be read; truly it was a step that used B on r1. */
    @Test
    void aLineOfUnknownKindJoinsAllThatItNames() {
        keep("{'id':'k','kind':'st?p','version':1,'occurredAt':'2026-03-10T08:00:00+01:00','actor':'o','source':'s',"
                + "'body':{'operation':'bond','station':'BOND','units':[{'item':'RCV','serial':'r1'}],"
                + "'uses':[{'item':'ADH','lot':'B'}]}}");
        truth("B", "r1");
    }

    /** The kind can't be read; truly r1 was taken out of w1 by it. */
    @Test
    void aLineOfUnknownKindMayHaveTakenAReceiverOut() {
        install("08:00", "r1", "w1");
        keep("{'id':'k','kind':'rem?val','version':1,'occurredAt':'2026-03-10T09:00:00+01:00','actor':'o','source':'s',"
                + "'body':{'child':{'unit':{'item':'RCV','serial':'r1'}},'parent':{'item':'WALL','serial':'w1'}}}");
        glue("10:00", "w1", "A");
        truth("A", "w1");
    }

    /** The void broke off in its reason: truly r1 never went into w1, r2 did, which is lost. */
    @Test
    void aVoidThatBrokeOffLeavesThePlaceOpen() {
        places();
        install("08:00", "r1", "w1");
        keep("{'id':'k','kind':'void','version':1,'occurredAt':'2026-03-10T09:00:00+01:00','actor':'o',"
                + "'source':'s','body':{'entry':'" + plant.lastId() + "','why':'wro");
        glue("10:00", "w1", "A");
        install("11:00", "w1", "m1");
        truth("A", "w1", "r2", "m1");
    }

    /** The line broke off within its use: truly B was used. */
    @Test
    void aStepThatBrokeOffBeforeItsLotMayHaveUsedAnyLot() {
        keep("{'id':'k','kind':'step','version':1,'occurredAt':'2026-03-10T09:00:00+01:00','actor':'o','source':'s',"
                + "'body':{'operation':'bond','station':'BOND','units':[{'item':'RCV','serial':'r1'}],"
                + "'uses':[{'item':'ADH','lot':'");
        truth("B", "r1");
    }

    /** The line broke off behind its units: truly B was used. */
    @Test
    void aStepThatBrokeOffBeforeItsUsesMayHaveUsedAnyLot() {
        keep("{'id':'k','kind':'step','version':1,'occurredAt':'2026-03-10T09:00:00+01:00','actor':'o','source':'s',"
                + "'body':{'operation':'bond','station':'BOND','units':[{'item':'RCV','serial':'r1'}],'use");
        truth("B", "r1");
    }

    /** The line broke off behind its first use: truly B was used too. */
    @Test
    void aStepThatBrokeOffBehindAUseMayHaveUsedMore() {
        keep("{'id':'k','kind':'step','version':1,'occurredAt':'2026-03-10T09:00:00+01:00','actor':'o','source':'s',"
                + "'body':{'operation':'bond','station':'BOND','units':[{'item':'RCV','serial':'r1'}],"
                + "'uses':[{'item':'ADH','lot':'A'},{");
        truth("B", "r1");
        assertThat(asked.lot("A").ever()).containsEntry("r1", Certainty.POSSIBLE);
    }

    /** The label was not scanned, and nothing is loaded where it was taken from. */
    @Test
    void aStepThatCouldNotBeReadMayHaveUsedAnyLotWhereNoneWasScanned() {
        plant.item("PRI", "lot", null, "g");
        plant.receipt("1 06:00", "P", "PRI");
        keep("{'id':'k','kind':'step','version':'l','occurredAt':'2026-03-10T09:00:00+01:00','actor':'o','source':'s',"
                + "'body':{'operation':'bond','station':'BOND','units':[{'item':'RCV','serial':'r1'}],"
                + "'uses':[{'item':'ADH','position':'V1'}]}}");
        truth("B", "r1");
        assertThat(asked.lot("P").ever()).isEmpty();
    }

    /** The same where A is loaded: it was A. */
    @Test
    void aStepThatCouldNotBeReadUsedWhatWasLoadedWhereItWasTakenFrom() {
        plant.charge("07:00", "A", "V1");
        keep("{'id':'k','kind':'step','version':'l','occurredAt':'2026-03-10T09:00:00+01:00','actor':'o','source':'s',"
                + "'body':{'operation':'bond','station':'BOND','units':[{'item':'RCV','serial':'r1'}],"
                + "'uses':[{'item':'ADH','position':'V1'}]}}");
        truth("A", "r1");
        assertThat(asked.lot("B").ever()).isEmpty();
    }

    /** The line broke off within the lot of what the step is said to have used instead: truly B was. */
    @Test
    void aCorrectionThatBrokeOffBeforeItsLotTakesBackWhatItCorrects() {
        plant.bondWithLot("08:00", "r1", "A");
        keep("{'id':'k','kind':'correction','version':1,'occurredAt':'2026-03-10T09:00:00+01:00','actor':'o',"
                + "'source':'s','body':{'entry':'" + plant.lastId() + "','why':'wrong','body':{'operation':'bond',"
                + "'station':'BOND','units':[{'item':'RCV','serial':'r1'}],'uses':[{'item':'ADH','lot':'");
        truth("B", "r1");
    }

    /** The installation of r1 in w1 is lost: what acted on w1 acted on it. */
    @Test
    void aStepThatCouldNotBeReadReachesAChildThatIsNotRecorded() {
        places();
        keep("{'id':'k','kind':'step','version':'l','occurredAt':'2026-03-10T09:00:00+01:00','actor':'o','source':'s',"
                + "'body':{'operation':'bond','station':'BOND','units':[{'item':'WALL','serial':'w1'}],"
                + "'uses':[{'item':'ADH','lot':'A'}]}}");
        install("10:00", "w1", "m1");
        truth("A", "w1", "r1", "m1");
    }

    /** The same of a parent: r1 was in w1, which was glued by the record of r1. */
    @Test
    void aStepThatCouldNotBeReadReachesAParentThatIsNotRecorded() {
        places();
        keep("{'id':'k','kind':'step','version':'l','occurredAt':'2026-03-10T09:00:00+01:00','actor':'o','source':'s',"
                + "'body':{'operation':'bond','station':'BOND','units':[{'item':'RCV','serial':'r1'}],"
                + "'uses':[{'item':'ADH','lot':'A'}]}}");
        install("10:00", "w1", "m1");
        truth("A", "w1", "r1", "m1");
    }

    /** The line broke off before its lot: the container is of B, which A carried over. */
    @Test
    void aChargeThatBrokeOffBeforeItsLotIsOfTheLotOfItsContainer() {
        plant.say("container", "1 07:00", Map.of("lot", "B", "containers", List.of(Map.of("label", "C1"))));
        keep("{'id':'k','kind':'charge','version':1,'occurredAt':'2026-03-10T08:00:00+01:00','actor':'o','source':'s',"
                + "'body':{'container':'C1','station':'BOND','position':'V1','lo");
        plant.charge("09:00", "A", "V1");
        plant.bondAt("10:00", "r1", "V1", "A");
        truth("B", "r1", "C1");
    }

    /** The line broke off before its component: truly it was B. */
    @Test
    void aTopUpThatBrokeOffMayBeOfAnyLot() {
        keep("{'id':'k','kind':'blend','version':1,'occurredAt':'2026-03-10T08:00:00+01:00','actor':'o','source':'s',"
                + "'body':{'lot':'A','item':'ADH','way':'top-up','components':[{'lot':'");
        plant.bondWithLot("10:00", "r1", "A");
        truth("B", "r1");
    }

    /** The line broke off before its lot: truly it was B. */
    @Test
    void aFillingThatBrokeOffMayBeOfAnyLot() {
        plant.say("container", "1 07:00", Map.of("lot", "A", "containers", List.of(Map.of("label", "C1"))));
        keep("{'id':'k','kind':'container','version':1,'occurredAt':'2026-03-10T08:00:00+01:00','actor':'o',"
                + "'source':'s','body':{'containers':[{'label':'C1'}],'lo");
        use("10:00", Map.of("item", "ADH", "container", "C1"), "r1");
        truth("B", "r1");
    }

    /** Truly r1 came off T1 before C-1, and the run that cured it is not told: it was C-2. */
    @Test
    void anUnloadThatCouldNotBeReadLeavesTheCureOpen() {
        cured();
        glue("07:00", "r1", "A");
        Map<String, Object> tray = Map.of("carrier", "T1");
        plant.say("carrier-load", "07:30", Map.of("carrier", "T1", "loads", List.of(Map.of("unit", unit("r1")))));
        keep("{'id':'k','kind':'carrier-unload','version':'l','occurredAt':'2026-03-10T08:00:00+01:00','actor':'o',"
                + "'source':'s','body':{'carrier':'T1','unloads':[{'unit':{'item':'RCV','serial':'r1'}}]}}");
        ovens.cure("08:30", "09:00", "C-1", List.of(), List.of("T1"));
        cure("08:30", "09:00", "C-2", "r2");
        plant.say("carrier-unload", "09:30", tray);
        step("10:00", "coat", "r1");
        truthOfRun("C-2", "r1", "r2");
    }

    /** Truly another body was cured in C-1 under this serial, and the run of this one is not told: it was C-2. */
    @Test
    void aBirthThatCouldNotBeReadLeavesTheCureOpen() {
        cured();
        glue("07:00", "r1", "A");
        keep("{'id':'k','kind':'birth','version':'l','occurredAt':'2026-03-10T06:00:00+01:00','actor':'o',"
                + "'source':'s','body':{'units':[{'item':'RCV','serial':'r1'}]}}");
        cure("08:30", "09:00", "C-1", "r1");
        cure("08:30", "09:00", "C-2", "r2");
        step("10:00", "coat", "r1");
        truthOfRun("C-2", "r1", "r2");
    }

    /** The bond of r1 with A is lost, and only the kept line tells that it was due: r1 was in w1. */
    @Test
    void aRemovalThatCouldNotBeReadTellsThatWhatCameBeforeWasDue() {
        route("RCV", op("bond", "ADH"), op("coat"));
        keep("{'id':'k','kind':'removal','version':'l','occurredAt':'2026-03-10T09:00:00+01:00','actor':'o',"
                + "'source':'s','body':{'child':{'unit':{'item':'RCV','serial':'r1'}},"
                + "'parent':{'item':'WALL','serial':'w1'}}}");
        truth("A", "r1");
    }

    /** The same, of a wall whose receiver is not recorded. */
    @Test
    void anInstallationThatCouldNotBeReadTellsThatItsChildWasWhole() {
        places();
        glue("08:00", "r1", "A");
        keep("{'id':'k','kind':'installation','version':'l','occurredAt':'2026-03-10T09:00:00+01:00','actor':'o',"
                + "'source':'s','body':{'child':{'unit':{'item':'WALL','serial':'w1'}},"
                + "'parent':{'item':'MOD','serial':'m1'}}}");
        truth("A", "r1", "w1", "m1");
    }

    /** Its coat could not be read, but tells that it was bonded before: with B, and that is lost. */
    @Test
    void aLaterStepThatCouldNotBeReadTellsThatWhatCameBeforeWasDue() {
        route("RCV", op("bond", "ADH"), op("coat"));
        plant.birth("07:30", "RCV", "r1");
        keep("{'id':'k','kind':'step','version':'l','occurredAt':'2026-03-10T09:00:00+01:00','actor':'o','source':'s',"
                + "'body':{'operation':'coat','station':'BOND','units':[{'item':'RCV','serial':'r1'}]}}");
        truth("B", "r1");
    }

    /** The same, by its shipment. */
    @Test
    void aShipmentThatCouldNotBeReadTellsThatWhatCameBeforeWasDue() {
        route("RCV", op("bond", "ADH"), op("coat"));
        plant.birth("07:30", "RCV", "r1");
        keep(
                "{'id':'k','kind':'shipment','version':'l','occurredAt':'2026-03-10T09:00:00+01:00','actor':'o','source':'s',"
                        + "'body':{'shipment':'SH-1','consignee':'C','units':[{'item':'RCV','serial':'r1'}]}}");
        truth("B", "r1");
    }

    /** The void could not be read: truly r1 was bonded with B, and that is lost. */
    @Test
    void aVoidThatCouldNotBeReadLeavesOpenWhatTheStepUsed() {
        route("RCV", op("bond", "ADH"), op("coat"));
        glue("08:00", "r1", "A");
        keep("{'id':'k','kind':'void','version':'l','occurredAt':'2026-03-10T09:00:00+01:00','actor':'o',"
                + "'source':'s','body':{'entry':'" + plant.lastId() + "','why':'wrong'}}");
        truth("B", "r1");
    }

    @Test
    void whatIsRecordedLaterChangesNoAnswerAtItsCutOff() {
        places();
        install("08:00", "r1", "w1");
        String installation = plant.lastId();
        glue("09:00", "w1", "A");
        String glue = plant.lastId();
        keep("{'id':'k','kind':'removal','version':1,'occurredAt':'2026-03-10T08:30:00+01:00','actor':'o',"
                + "'source':'s','body':{'child':{'unit':{'item':'RCV','serial':'r1'}},'par");
        use("10:00", Map.of("item", "ADH"), "r2");
        long known = sealer.seal();
        List<String> before = hashes(known);
        plant.correct("09:30", glue, Map.of("operation", "bond", "station", "BOND", "units", List.of(unit("w2"))));
        receive("D");
        plant.birth("2 05:00", "RCV", "r8");
        plant.station("LATE", "60", "V1");
        install("08:10", "w1", "m1");
        remove("08:20", "r1", "w1");
        plant.undo("11:00", installation);
        jdbc.sql("DELETE FROM genealogy.answer").update();
        assertThat(hashes(known)).isEqualTo(before);
        assertThat(new TreeSet<>(before)).hasSameSizeAs(before);
    }
}
