package dev.sunthread.demo.line;

import dev.sunthread.demo.told.Bodies;
import dev.sunthread.demo.told.Notebook;
import dev.sunthread.demo.told.PlantTime;
import dev.sunthread.demo.told.Teller;
import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ObjectNode;

/** The two walls of each day, and the days on which something else happens to them. */
public final class WallDays {

    /** Laid aside when it came out of optic mounting, so that no one takes it from stock. */
    public static final String HELD = "RC-0320";

    private final Notebook notes;
    private final Walls walls;
    private final Stock stock;
    private @Nullable String salvaged;

    public WallDays(Notebook notes, Walls walls, Stock stock) {
        this.notes = notes;
        this.walls = walls;
        this.stock = stock;
    }

    /** Lays a receiver that came out of another wall ready for the next morning. */
    public void layReady(String receiver) {
        salvaged = receiver;
    }

    public void morning(int day) {
        OffsetDateTime start = PlantTime.at(day, "07:00");
        Wall wall = walls.begin(start);
        if (day == 12) {
            walls.fill(wall, start, 4);
            positionIsFilledTwice(wall, start);
        }
        if (salvaged != null) {
            walls.fill(wall, start, 6);
            walls.install(wall, walls.timeOfNext(wall, start), salvaged);
            salvaged = null;
        }
        walls.fill(wall, start, Wall.SIZE);
        sealInTheMorning(wall, day);
    }

    private void sealInTheMorning(Wall wall, int day) {
        if (day == 19) {
            walls.seal(wall, PlantTime.at(day, "14:22"), null);
        } else {
            walls.seal(wall, PlantTime.at(day, "08:05").plusSeconds(notes.between(0, 50)), "GUN-A");
        }
        walls.passOn(wall);
    }

    public void afternoon(int day) {
        OffsetDateTime start = PlantTime.at(day, "13:30");
        Wall wall = walls.begin(start);
        if (day == 25) {
            heldReceiverIsPutIn(wall, start);
        } else if (day == 31) {
            walls.fill(wall, start, 7);
        } else {
            walls.fill(wall, start, Wall.SIZE);
            OffsetDateTime at = PlantTime.at(day, "14:44").plusSeconds(notes.between(0, 50));
            walls.seal(wall, at, day == 19 ? null : "GUN-B");
            walls.passOn(wall);
        }
    }

    /** The scan of the removal between two installations waits in a scanner that is out of reach. */
    private void positionIsFilledTwice(Wall wall, OffsetDateTime start) {
        String takenOut = stock.take();
        String staying = stock.take();
        OffsetDateTime first = walls.timeOfNext(wall, start);
        OffsetDateTime second = first.plusMinutes(2);
        Teller operator = walls.operator(first);
        operator.tell(first, "installation", Walls.installation(wall, "R5", takenOut));
        String conflict = operator.tell(second, "installation", Walls.installation(wall, "R5", staying));
        wall.receivers().add(staying);
        ObjectNode removal = Walls.moveOf(wall, "R5", takenOut).put("station", "SEAL-1");
        operator.tellLate(second.minusSeconds(60), PlantTime.at(12, "09:41"), "removal", removal);
        stock.add(List.of(takenOut));
        ObjectNode settlement = Bodies.of("entry", conflict).put("finding", 1);
        settlement.put("why", "The receiver put in first was taken out for a bent lead; its scan came late");
        notes.teller("qe-02", "quality").tell(PlantTime.at(12, "10:05"), "finding-settlement", settlement);
    }

    private void heldReceiverIsPutIn(Wall wall, OffsetDateTime start) {
        ObjectNode hold = Bodies.of();
        hold.set("units", Bodies.list(List.of(Bodies.unit("RCV-100", HELD))));
        hold.put("reason", "Scratch seen on the optic; waits for a look under the microscope");
        notes.teller("qe-02", "quality").tell(PlantTime.at(25, "10:20"), "hold", hold);
        walls.fill(wall, start, Wall.SIZE - 1);
        OffsetDateTime at = walls.timeOfNext(wall, start);
        ObjectNode installation = Walls.installation(wall, wall.nextPosition(), HELD);
        walls.operator(at).tellLate(at, PlantTime.at(26, "06:12"), "installation", installation);
        wall.receivers().add(HELD);
    }
}
