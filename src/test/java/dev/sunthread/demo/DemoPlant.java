package dev.sunthread.demo;

import dev.sunthread.demo.floor.Floor;
import dev.sunthread.demo.line.Line;
import dev.sunthread.demo.told.JournalWriter;
import dev.sunthread.demo.told.Notebook;
import dev.sunthread.simulator.world.Happening;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;

/** The demo plant: ten weeks of a pilot line, the same to the byte each time it is made. */
final class DemoPlant {

    static final Path FILE = Path.of("demo-data", "plant.ndjson.gz");

    /** The width of the line in the repository's file. */
    static final int TRAYS_A_DAY = 20;

    /** A line half as wide, on which all the same stories happen. */
    static final int FEW_TRAYS = 2;

    private static final long SEED = 20260914L;

    private final Floor floor;

    private DemoPlant(int traysADay) {
        floor = new Floor(new Notebook(new Random(SEED)), traysADay);
        new Line(floor).work();
    }

    static DemoPlant of(int traysADay) {
        return new DemoPlant(traysADay);
    }

    public static void main(String[] arguments) throws IOException {
        Files.createDirectories(FILE.getParent());
        Files.write(FILE, JournalWriter.compressed(of(TRAYS_A_DAY).journal()));
    }

    /** The plant's whole journal as text. */
    String journal() {
        return JournalWriter.text(floor.notes().inOrderOfRecording());
    }

    /** All that truly happened, which no file of the application tells. */
    List<Happening> happened() {
        return floor.happened();
    }
}
