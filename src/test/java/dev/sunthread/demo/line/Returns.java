package dev.sunthread.demo.line;

import dev.sunthread.demo.told.PlantTime;
import java.time.OffsetDateTime;

/** Panels that come back: one has a receiver swapped, one goes to another consignee as it is. */
public final class Returns {

    public static final String QUILLMARSH = "Quillmarsh Sun Field";
    public static final String THISTLEDOWN = "Thistledown Ridge Array";
    public static final String EMBERLOW = "Emberlow Test Field";

    private final Panels panels;
    private final Walls walls;
    private final WallDays wallDays;
    private final Stock stock;

    public Returns(Panels panels, Walls walls, WallDays wallDays, Stock stock) {
        this.panels = panels;
        this.walls = walls;
        this.wallDays = wallDays;
        this.stock = stock;
    }

    public void during(int day) {
        switch (day) {
            case 18 -> panels.takeBack(panels.number(2), PlantTime.at(18, "09:30"), QUILLMARSH);
            case 19 -> swap(panels.number(2).modules().get(1).wall());
            case 20 -> sendAgain(2, day, QUILLMARSH);
            case 23 -> panels.takeBack(panels.number(3), PlantTime.at(23, "10:10"), THISTLEDOWN);
            case 26 -> sendAgain(3, day, EMBERLOW);
            default -> {}
        }
    }

    private void swap(Wall wall) {
        String takenOut = wall.receivers().get(2);
        OffsetDateTime at = PlantTime.at(19, "10:31");
        walls.operator(at).tell(at, "removal", Walls.installation(wall, "R3", takenOut));
        String replacement = stock.take();
        walls.operator(at).tell(at.plusMinutes(14), "installation", Walls.installation(wall, "R3", replacement));
        wall.receivers().set(2, replacement);
        walls.seal(wall, at.plusMinutes(48), "GUN-B");
        wallDays.layReady(takenOut);
    }

    private void sendAgain(int number, int day, String consignee) {
        panels.pack(panels.number(number), PlantTime.at(day, "12:05"));
        panels.ship(panels.number(number), PlantTime.at(day, "13:20"), consignee);
    }
}
