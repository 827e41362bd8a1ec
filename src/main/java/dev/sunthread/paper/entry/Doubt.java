package dev.sunthread.paper.entry;

import dev.sunthread.station.label.Resembling;
import java.util.List;

/**
 * Something on a record that a person should look at again before it is entered.
 *
 * @param box the box it is about, or {@code person} or {@code time}
 * @param key of the message that says what is odd
 * @param with what the message names
 * @param alike what is called nearly so
 */
public record Doubt(String box, String key, List<String> with, List<Resembling.Alike> alike) {

    static Doubt of(String box, String key, String... with) {
        return new Doubt(box, key, List.of(with), List.of());
    }
}
