package dev.sunthread.simulator;

import dev.sunthread.simulator.told.Fault;
import dev.sunthread.simulator.told.Rates;
import dev.sunthread.simulator.world.Layout;
import dev.sunthread.simulator.world.Place;
import java.util.HashMap;
import java.util.Map;

/**
 * How one plant works.
 *
 * @param mixByHand two-part mix is put on by hand and never loaded at a position
 * @param foreign other materials are loaded at a position now and then
 * @param regrades what goes on under another number goes on as another item where it can
 * @param byHand some material is used by hand at a station where other lots are loaded
 * @param rows material is changed in the middle of a row of units now and then
 * @param changes how often material is changed before a use
 * @param carryOver positions where a released limit says after how many uses nothing of earlier lots is left
 * @param clocks seconds by which each station's clock may be wrong
 */
public record Habits(
        boolean mixByHand,
        boolean foreign,
        boolean regrades,
        boolean byHand,
        boolean rows,
        double changes,
        Map<Place, Integer> carryOver,
        Map<String, Integer> clocks) {

    /** Draws habits; {@code more} draws those that came later, so that plants known by their seed stay as they are. */
    static Habits drawn(Chance chance, Rates rates, Chance more) {
        Map<Place, Integer> carryOver = new HashMap<>();
        if (chance.of(0.25)) {
            carryOver.put(new Place("BOND", "V1"), chance.between(0, 2));
        }
        Map<String, Integer> clocks = new HashMap<>();
        Layout.POSITIONS.keySet().stream()
                .sorted()
                .forEach(station -> clocks.put(station, chance.of(0.5) ? 0 : chance.between(1, 60)));
        return new Habits(
                chance.of(0.3),
                chance.of(rates.of(Fault.FOREIGN_LOAD)),
                rates.of(Fault.LOST_REGRADE) > 0,
                more.of(rates.of(Fault.USED_BY_HAND)),
                more.of(rates.of(Fault.CHANGED_IN_A_ROW)),
                chance.of(0.5) ? 0.2 : 0.5,
                carryOver,
                clocks);
    }
}
