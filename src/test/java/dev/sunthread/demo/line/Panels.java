package dev.sunthread.demo.line;

import dev.sunthread.demo.supply.Crew;
import dev.sunthread.demo.supply.Plan;
import dev.sunthread.demo.told.Bodies;
import dev.sunthread.demo.told.Notebook;
import dev.sunthread.demo.told.PlantTime;
import dev.sunthread.demo.told.Teller;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import tools.jackson.databind.node.ObjectNode;

/** Frames four modules into a panel, packs it and ships it. */
public final class Panels {

    /** A panel and the modules in it. */
    public record Panel(String serial, List<Modules.Module> modules) {

        public ObjectNode unit() {
            return Bodies.unit("PAN-400", serial);
        }
    }

    private static final int SIZE = 4;
    private static final Plan FRAMES = Plan.of("9:R-51 20@14:00:R-52");

    private final Notebook notes;
    private final List<Panel> built = new ArrayList<>();
    private int shipments;

    public Panels(Notebook notes) {
        this.notes = notes;
    }

    /** The panel of that number, from 1. */
    public Panel number(int number) {
        return built.get(number - 1);
    }

    public Panel frame(Modules modules, int day) {
        Panel panel = new Panel("PN-%04d".formatted(built.size() + 1), new ArrayList<>());
        OffsetDateTime start = PlantTime.at(day, "14:50");
        Teller operator = Crew.at(notes, "FRAME-1", start);
        operator.tell(start, "birth", Bodies.birth(List.of(panel.unit()), "FRAME-1"));
        for (int i = 1; i <= SIZE; i++) {
            Modules.Module module = Objects.requireNonNull(modules.nextFinished());
            ObjectNode body = Bodies.move(Bodies.unitChild(module.unit()), panel.unit(), "P" + i);
            OffsetDateTime at = start.plusMinutes(5 + 4L * i).plusSeconds(notes.between(-20, 20));
            operator.tell(at, "installation", body.put("station", "FRAME-1"));
            panel.modules().add(module);
        }
        operator.tell(start.plusMinutes(55), "step", frameStep(panel, start));
        built.add(panel);
        return panel;
    }

    private static ObjectNode frameStep(Panel panel, OffsetDateTime start) {
        ObjectNode step = Bodies.step("frame", "FRAME-1", start.plusMinutes(30), List.of(panel.unit()));
        step.set("uses", Bodies.list(List.of(Bodies.use(Bodies.use("FRM-5", FRAMES.at(start), null), "1", "pcs"))));
        return step;
    }

    public void pack(Panel panel, OffsetDateTime at) {
        ObjectNode step = Bodies.step("pack", "PACK-1", at.minusMinutes(12), List.of(panel.unit()));
        Crew.at(notes, "PACK-1", at).tell(at, "step", step);
    }

    public void ship(Panel panel, OffsetDateTime at, String consignee) {
        ObjectNode body = Bodies.of("shipment", "SH-%04d".formatted(++shipments), "consignee", consignee);
        body.set("units", Bodies.list(List.of(panel.unit())));
        dispatch().tell(at, "shipment", body);
    }

    public void takeBack(Panel panel, OffsetDateTime at, String consignee) {
        ObjectNode body = Bodies.of("consignee", consignee);
        body.set("units", Bodies.list(List.of(panel.unit())));
        dispatch().tell(at, "return", body);
    }

    private Teller dispatch() {
        return notes.teller("lg-01", "dispatch");
    }
}
