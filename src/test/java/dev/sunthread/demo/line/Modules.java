package dev.sunthread.demo.line;

import dev.sunthread.demo.supply.Crew;
import dev.sunthread.demo.supply.Loading;
import dev.sunthread.demo.supply.Plan;
import dev.sunthread.demo.told.Bodies;
import dev.sunthread.demo.told.Notebook;
import dev.sunthread.demo.told.Teller;
import java.time.OffsetDateTime;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ObjectNode;

/** Builds modules: mirrors into a chassis, a sealed wall behind them, glass in front. */
public final class Modules {

    /** A finished module and the wall in it. */
    public record Module(String serial, Wall wall) {

        public ObjectNode unit() {
            return Bodies.unit("MOD-300", serial);
        }
    }

    private static final Plan CHASSIS = Plan.of("9:X-81 23:X-82");
    private static final Plan MIRRORS = Plan.of("9:M-31 16@11:38:M-32 25@09:08:M-33");
    private static final Plan GLASS = Plan.of("9:G-41 20:G-42");

    private final Notebook notes;
    private final Loading loading;
    private final Deque<Module> finished = new ArrayDeque<>();
    private int built;

    public Modules(Notebook notes, Loading loading) {
        this.notes = notes;
        this.loading = loading;
    }

    public void build(Wall wall, OffsetDateTime start) {
        ObjectNode module = begin(start, 4);
        Teller mirrors = Crew.at(notes, "MIRROR-1", start);
        mirrors.tell(start.plusMinutes(32), "step", mirrorStep(module, start));
        Teller glass = Crew.at(notes, "GLASS-1", start);
        OffsetDateTime closing = start.plusMinutes(50).plusSeconds(notes.between(0, 59));
        glass.tell(closing, "installation", atGlass(Bodies.unitChild(wall.unit()), module, "WALL"));
        glass.tell(closing.plusMinutes(5), "installation", atGlass(Bodies.partChild(GLASS.at(start)), module, "GLASS"));
        glass.tell(closing.plusMinutes(25), "step", glassStep(module, closing));
        finished.add(new Module(module.get("serial").asString(), wall));
    }

    /** Gives a module its serial and fits the first mirrors. */
    public ObjectNode begin(OffsetDateTime start, int mirrors) {
        ObjectNode module = Bodies.unit("MOD-300", "MD-%04d".formatted(++built));
        Teller operator = Crew.at(notes, "MIRROR-1", start);
        operator.tell(start, "birth", Bodies.birth(List.of(module), "MIRROR-1"));
        for (int i = 1; i <= mirrors; i++) {
            OffsetDateTime at = start.plusMinutes(3 + 2L * i).plusSeconds(notes.between(-20, 20));
            ObjectNode body = Bodies.move(Bodies.partChild(MIRRORS.at(at)), module, "M" + i);
            operator.tell(at, "installation", body.put("station", "MIRROR-1"));
        }
        return module;
    }

    @Nullable
    public Module nextFinished() {
        return finished.poll();
    }

    public int waiting() {
        return finished.size();
    }

    private static ObjectNode atGlass(ObjectNode child, ObjectNode module, String position) {
        return Bodies.move(child, module, position).put("station", "GLASS-1");
    }

    private ObjectNode mirrorStep(ObjectNode module, OffsetDateTime start) {
        String mass = "%d.%d".formatted(notes.between(38, 43), notes.between(0, 9));
        String epoxy = loading.lotAt("MIRROR-1", "EPOXY", start);
        ObjectNode step = Bodies.step("mirror", "MIRROR-1", start.plusMinutes(15), List.of(module));
        step.set(
                "uses",
                Bodies.list(List.of(
                        Bodies.use(Bodies.use("CHS-4", CHASSIS.at(start), null), "1", "pcs"),
                        Bodies.use(Bodies.use("EPX-1", epoxy, "EPOXY"), mass, "g"))));
        return step;
    }

    private ObjectNode glassStep(ObjectNode module, OffsetDateTime closing) {
        String mass = "%d.%d".formatted(notes.between(60, 66), notes.between(0, 9));
        String silicone = loading.lotAt("GLASS-1", "GUN", closing);
        ObjectNode step = Bodies.step("glass", "GLASS-1", closing.plusMinutes(10), List.of(module));
        step.set("uses", Bodies.list(List.of(Bodies.use(Bodies.use("SIL-9", silicone, "GUN"), mass, "g"))));
        return step;
    }
}
