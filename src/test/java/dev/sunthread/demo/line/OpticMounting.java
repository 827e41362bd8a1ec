package dev.sunthread.demo.line;

import dev.sunthread.demo.supply.Crew;
import dev.sunthread.demo.supply.Loading;
import dev.sunthread.demo.supply.Plan;
import dev.sunthread.demo.told.Bodies;
import dev.sunthread.demo.told.Notebook;
import dev.sunthread.demo.told.PlantTime;
import dev.sunthread.demo.told.Teller;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import tools.jackson.databind.node.ObjectNode;

/** Mounts optics and shields, with the wrong scans that operators make. */
final class OpticMounting {

    private static final String SCANNED_TWICE = "RC-0184";
    private static final String SCANNED_AS_THE_ONE_BEFORE = "RC-0185";
    private static final String KEPT_IN_THE_INBOX = "RC-0330";
    private static final int TRAY_OF_THE_BROKEN_NETWORK = 7;

    private static final Plan OPTICS = Plan.of("5:O-11 11@11:50:O-12 19@11:50:O-13 26@12:50:O-14");
    private static final Plan SHIELDS = Plan.of("5:S-91 17@11:40:S-92 26@11:40:S-93");

    private final Notebook notes;
    private final Loading loading;

    OpticMounting(Notebook notes, Loading loading) {
        this.notes = notes;
        this.loading = loading;
    }

    /** Mounts a tray's optics and gives the receivers that went on to stock. */
    List<String> mount(Tray tray) {
        List<String> finished = new ArrayList<>(
                IntStream.range(0, Tray.SIZE).mapToObj(tray::serial).toList());
        for (String serial : finished) {
            OffsetDateTime at =
                    tray.optic().plusMinutes(3L * finished.indexOf(serial)).plusSeconds(notes.between(-20, 20));
            mount(tray, serial, at);
        }
        finished.removeAll(List.of(KEPT_IN_THE_INBOX, WallDays.HELD));
        return finished;
    }

    private void mount(Tray tray, String serial, OffsetDateTime at) {
        Teller operator = Crew.at(notes, "OPTIC-1", at);
        if (serial.equals(SCANNED_AS_THE_ONE_BEFORE)) {
            String wrong = operator.tell(at, "step", step(SCANNED_TWICE, at));
            tellTheRightOneAfterTheWrong(operator, at, wrong);
        } else if (serial.equals(KEPT_IN_THE_INBOX)) {
            new MisreadScan(notes).keep(at, step(serial, at));
        } else if (tray.number() == TRAY_OF_THE_BROKEN_NETWORK) {
            operator.tellLate(at, PlantTime.at(10, "13:18").plusSeconds(notes.between(0, 5)), "step", step(serial, at));
        } else {
            operator.tell(at, "step", step(serial, at));
        }
    }

    private void tellTheRightOneAfterTheWrong(Teller operator, OffsetDateTime at, String wrong) {
        ObjectNode why = Bodies.of(
                "entry", wrong, "why", "The receiver before was scanned twice; the tray sheet shows the next one");
        notes.teller("qe-02", "quality").tell(PlantTime.at(24, "16:10"), "void", why);
        operator.tellLate(at, PlantTime.at(24, "16:14"), "step", step(SCANNED_AS_THE_ONE_BEFORE, at));
    }

    private ObjectNode step(String serial, OffsetDateTime at) {
        ObjectNode step = Bodies.step("optic", "OPTIC-1", at.minusSeconds(90), List.of(Bodies.unit("RCV-100", serial)));
        String adhesive = loading.lotAt("OPTIC-1", "UV", at);
        step.set(
                "uses",
                Bodies.list(List.of(
                        Bodies.use(Bodies.use("SOE-14", OPTICS.at(at), null), "1", "pcs"),
                        Bodies.use(Bodies.use("SHD-3", SHIELDS.at(at), null), "1", "pcs"),
                        Bodies.use(Bodies.use("UVA-7", adhesive, "UV"), "0.06", "ml"))));
        step.set(
                "values",
                Bodies.list(List.of(Bodies.value("uv-dose", "3.%d".formatted(notes.between(0, 6)), "J/cm2"))));
        return step;
    }
}
