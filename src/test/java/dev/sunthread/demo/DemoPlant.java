package dev.sunthread.demo;

import dev.sunthread.demo.line.Modules;
import dev.sunthread.demo.line.Panels;
import dev.sunthread.demo.line.Receivers;
import dev.sunthread.demo.line.Returns;
import dev.sunthread.demo.line.Stock;
import dev.sunthread.demo.line.Wall;
import dev.sunthread.demo.line.WallDays;
import dev.sunthread.demo.line.Walls;
import dev.sunthread.demo.supply.Definitions;
import dev.sunthread.demo.supply.Loading;
import dev.sunthread.demo.supply.Receipts;
import dev.sunthread.demo.told.JournalWriter;
import dev.sunthread.demo.told.Notebook;
import dev.sunthread.demo.told.PlantTime;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/** The first demo plant: one month of a small line, the same to the byte each time it is made. */
final class DemoPlant {

    static final Path FILE = Path.of("demo-data", "plant.ndjson.gz");

    private static final long SEED = 20260305L;
    private static final List<Integer> DAYS =
            List.of(5, 6, 9, 10, 11, 12, 13, 16, 17, 18, 19, 20, 23, 24, 25, 26, 27, 30, 31);
    private static final int FIRST_WALLS = 6;
    private static final int FIRST_MODULES = 9;
    private static final List<String> CONSIGNEES = List.of(
            Returns.EMBERLOW,
            Returns.QUILLMARSH,
            Returns.THISTLEDOWN,
            Returns.QUILLMARSH,
            Returns.EMBERLOW,
            Returns.THISTLEDOWN,
            Returns.QUILLMARSH);

    private final Notebook notes = new Notebook(new Random(SEED));
    private final Loading loading = new Loading(notes);
    private final Stock stock = new Stock(notes);
    private final Walls walls = new Walls(notes, loading, stock);
    private final WallDays wallDays = new WallDays(notes, walls, stock);
    private final Modules modules = new Modules(notes, loading);
    private final Panels panels = new Panels(notes);
    private final Returns returns = new Returns(panels, walls, wallDays, stock);
    private final Receivers receivers = new Receivers(notes, loading, stock);
    private Panels.@Nullable Panel framedTheDayBefore;

    private DemoPlant() {}

    public static void main(String[] arguments) throws IOException {
        Files.createDirectories(FILE.getParent());
        Files.write(FILE, JournalWriter.compressed(journal()));
    }

    /** The plant's whole journal as text. */
    static String journal() {
        return JournalWriter.text(new DemoPlant().tell());
    }

    private List<Notebook.Line> tell() {
        new Definitions(notes).tell();
        new Receipts(notes).tell();
        loading.tell();
        DAYS.forEach(this::work);
        return notes.inOrderOfRecording();
    }

    private void work(int day) {
        packAndShip(day);
        if (day >= FIRST_MODULES) {
            buildModule(day, "09:00");
            buildModule(day, "11:30");
            frame(day);
        }
        if (day >= FIRST_WALLS) {
            wallDays.morning(day);
        }
        returns.during(day);
        receivers.make(day);
        if (day >= FIRST_WALLS) {
            wallDays.afternoon(day);
        }
    }

    private void buildModule(int day, String time) {
        Wall wall = walls.nextSealed();
        if (wall != null) {
            modules.build(wall, PlantTime.at(day, time));
        }
    }

    private void frame(int day) {
        if (modules.waiting() >= 4) {
            framedTheDayBefore = panels.frame(modules, day);
        }
        if (day == 31) {
            modules.begin(PlantTime.at(day, "14:00"), 2);
        }
    }

    private void packAndShip(int day) {
        Panels.Panel panel = framedTheDayBefore;
        if (panel != null) {
            panels.pack(panel, PlantTime.at(day, "08:40"));
            panels.ship(panel, PlantTime.at(day, "11:00"), consigneeOf(panel));
            framedTheDayBefore = null;
        }
    }

    private static String consigneeOf(Panels.Panel panel) {
        return CONSIGNEES.get(Integer.parseInt(panel.serial().substring(3)) - 1);
    }
}
