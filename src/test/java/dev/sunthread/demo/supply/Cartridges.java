package dev.sunthread.demo.supply;

import dev.sunthread.demo.floor.Floor;
import dev.sunthread.demo.told.Bodies;
import dev.sunthread.demo.told.PlantTime;
import dev.sunthread.simulator.world.Place;
import dev.sunthread.simulator.world.Source;
import dev.sunthread.simulator.world.Supply;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Cartridges of thermal adhesive: filled from a lot, kept frozen, thawed, opened and loaded on one of the four valves of
 * the bonders. An open one lives two working days, so every other morning all four are changed.
 */
public final class Cartridges {

    public static final List<Place> VALVES = List.of(
            new Place("BOND-1", "V1"), new Place("BOND-1", "V2"), new Place("BOND-2", "V1"), new Place("BOND-2", "V2"));
    private static final int OF_A_LOT = 12;
    private static final int USED_OF_A_LOT = 10;

    private final Floor floor;
    private final Loads loads;

    public Cartridges(Floor floor, Loads loads) {
        this.floor = floor;
        this.loads = loads;
    }

    /** The change of a morning, if there is one. */
    public void on(int workday) {
        if (workday % 2 == 0) {
            IntStream.range(0, VALVES.size()).forEach(valve -> change(workday, valve));
        }
    }

    /** The lot of a cartridge, all of them counted in the order in which they are used. */
    private static String lotOf(int cartridge) {
        return Material.of("TIM-5").lot(cartridge / USED_OF_A_LOT);
    }

    private static Source cartridge(int number) {
        return new Source(lotOf(number), label(number / USED_OF_A_LOT, number % USED_OF_A_LOT));
    }

    private static String label(int lot, int number) {
        return "%s-%02d".formatted(Material.of("TIM-5").lot(lot), number + 1);
    }

    private void change(int workday, int valve) {
        int number = workday / 2 * VALVES.size() + valve;
        if (number % USED_OF_A_LOT == 0) {
            fill(number / USED_OF_A_LOT, PlantTime.at(Math.max(workday - 1, -1), "15:20"));
        }
        Place place = VALVES.get(valve);
        Source next = cartridge(number);
        OffsetDateTime begin = PlantTime.at(workday, "05:30").plusMinutes(3L * valve);
        thaw(next, PlantTime.at(workday, "04:20").plusMinutes(valve));
        load(workday, valve, place, next, begin);
    }

    private void load(int workday, int valve, Place place, Source next, OffsetDateTime begin) {
        if (Stories.cartridgeIsChangedWithoutPurge(workday, valve)) {
            exchange(place, next, begin, true);
        } else if (Stories.dischargeIsNeverTold(workday, valve)) {
            exchange(place, next, begin, false);
        } else if (Stories.cartridgeIsToldTooLate(workday, valve)) {
            stayLonger(place, next, PlantTime.at(workday, "07:12"));
        } else {
            loads.changeCleanly(place, next, begin);
        }
    }

    private void exchange(Place place, Source next, OffsetDateTime begin, boolean told) {
        Source before = loads.at(place, begin);
        loads.trulyUnload(place, begin);
        if (told) {
            loads.tellUnloaded(place, before, begin);
        }
        loads.trulyLoad(place, next, begin.plusMinutes(5));
        loads.leavesBehind(place, begin.plusMinutes(5));
        loads.tellLoaded(place, next, begin.plusMinutes(5));
    }

    private void stayLonger(Place place, Source next, OffsetDateTime change) {
        loads.tellUnloaded(place, loads.at(place, change), change.minusMinutes(62));
        loads.trulyUnload(place, change.minusMinutes(1));
        loads.trulyLoad(place, next, change);
        loads.leavesBehind(place, change);
        loads.tellLoaded(place, next, change);
    }

    private void fill(int lot, OffsetDateTime at) {
        List<String> labels = IntStream.range(0, OF_A_LOT)
                .mapToObj(number -> label(lot, number))
                .toList();
        int grams = Math.max(3, (int) Math.floor(120.0 * 5 * floor.traysADay() / 20 / OF_A_LOT));
        floor.happens(new Supply.Filling(Floor.micros(at), Material.of("TIM-5").lot(lot), labels));
        floor.store()
                .tell(
                        at,
                        "container",
                        "lot",
                        Material.of("TIM-5").lot(lot),
                        "containers",
                        labels.stream()
                                .map(label -> Bodies.of(
                                        "label", label, "quantity", String.valueOf(grams), "unitOfMeasure", "g"))
                                .toList());
        for (String label : labels) {
            floor.store()
                    .tell(
                            at.plusMinutes(10),
                            "container-move",
                            "container",
                            label,
                            "place",
                            "Freezer 2",
                            "storage",
                            "frozen");
        }
    }

    private void thaw(Source cartridge, OffsetDateTime at) {
        String label = String.valueOf(cartridge.container());
        floor.store().tell(at, "container-move", "container", label, "place", "Bonding room", "storage", "room");
        floor.store().tell(at.plusMinutes(45), "container-opening", "container", label);
    }
}
