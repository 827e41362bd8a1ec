package dev.sunthread.demo.line;

import dev.sunthread.demo.floor.Floor;
import dev.sunthread.demo.told.JournalWriter;
import dev.sunthread.demo.told.Notebook;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Random;
import tools.jackson.databind.node.ObjectNode;

/** A narrow demo plant, and what its ovens, lamps and rigs would tell of further work. */
public final class MachineData {

    private static final long SEED = 20260914L;

    private final Notebook notes = new Notebook(new Random(SEED));
    private final Profiles profiles = new Profiles(notes);
    private final Curves curves = new Curves(notes);

    /** The journal of a plant of two trays a day. */
    public static String journal() {
        Floor floor = new Floor(new Notebook(new Random(SEED)), 2);
        new Line(floor).work();
        return JournalWriter.text(floor.notes().inOrderOfRecording());
    }

    public List<ObjectNode> profile(String recipe, String equipment, OffsetDateTime start, OffsetDateTime end) {
        return profiles.of(new Runs.Run("any", recipe, equipment, "any", start, end));
    }

    /** A sweep of a wall or of a module without a weak cell. */
    public ObjectNode sweep(String specification) {
        return curves.sweep(specification.equals("WAL-IV") ? 4.12 : 3.86, true);
    }
}
