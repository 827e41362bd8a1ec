package dev.sunthread.demo.line;

import dev.sunthread.demo.supply.Crew;
import dev.sunthread.demo.supply.Loading;
import dev.sunthread.demo.told.Bodies;
import dev.sunthread.demo.told.Notebook;
import dev.sunthread.demo.told.Teller;
import java.time.OffsetDateTime;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ObjectNode;

/** Puts receivers into walls and seals them, each wall with the gun of its half of the day. */
public final class Walls {

    private final Notebook notes;
    private final Loading loading;
    private final Stock stock;
    private final Deque<Wall> sealed = new ArrayDeque<>();
    private int built;

    public Walls(Notebook notes, Loading loading, Stock stock) {
        this.notes = notes;
        this.loading = loading;
        this.stock = stock;
    }

    /** A new wall with nothing in it. */
    public Wall begin(OffsetDateTime at) {
        Wall wall = Wall.empty(++built);
        operator(at).tell(at.minusMinutes(6), "birth", Bodies.birth(List.of(wall.unit()), "SEAL-1"));
        return wall;
    }

    /** Puts receivers from stock into the next positions, one in three minutes, up to a number of them. */
    public void fill(Wall wall, OffsetDateTime start, int upTo) {
        while (wall.receivers().size() < upTo) {
            install(wall, timeOfNext(wall, start), stock.take());
        }
    }

    public OffsetDateTime timeOfNext(Wall wall, OffsetDateTime start) {
        return start.plusMinutes(3L * wall.receivers().size()).plusSeconds(notes.between(-20, 20));
    }

    public void install(Wall wall, OffsetDateTime at, String receiver) {
        operator(at).tell(at, "installation", installation(wall, wall.nextPosition(), receiver));
        wall.receivers().add(receiver);
    }

    public static ObjectNode installation(Wall wall, String position, String receiver) {
        return moveOf(wall, position, receiver).put("station", "SEAL-1");
    }

    public static ObjectNode moveOf(Wall wall, String position, String receiver) {
        return Bodies.move(Bodies.unitChild(Bodies.unit("RCV-100", receiver)), wall.unit(), position);
    }

    /** Seals a wall; without a gun the step names only the item. */
    public void seal(Wall wall, OffsetDateTime at, @Nullable String gun) {
        String mass = "%d.%d".formatted(notes.between(88, 95), notes.between(0, 9));
        ObjectNode step = Bodies.step("seal", "SEAL-1", at.minusMinutes(20), List.of(wall.unit()));
        @Nullable String lot = gun == null ? null : loading.lotAt("SEAL-1", gun, at);
        step.set("uses", Bodies.list(List.of(Bodies.use(Bodies.use("SIL-9", lot, gun), mass, "g"))));
        step.set("values", Bodies.list(List.of(Bodies.value("bead-mass", mass, "g"))));
        operator(at).tell(at, "step", step);
    }

    public void passOn(Wall wall) {
        sealed.add(wall);
    }

    @Nullable
    public Wall nextSealed() {
        return sealed.poll();
    }

    public Teller operator(OffsetDateTime at) {
        return Crew.at(notes, "SEAL-1", at);
    }
}
