package dev.sunthread.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class RememberedTests {

    private final List<Set<String>> asked = new ArrayList<>();

    @Test
    void asksOnceForWhatIsNotKnown() {
        Map<String, Integer> memory = new LinkedHashMap<>(Map.of("one", 3));
        assertThat(each(memory, "one", "seven", "seven")).isEqualTo(Map.of("one", 3, "seven", 5));
        assertThat(each(memory, "seven", "one")).isEqualTo(Map.of("one", 3, "seven", 5));
        assertThat(asked).containsExactly(Set.of("seven"));
    }

    @Test
    void givesWhatTheMemoryDropsForOthersMeanwhile() {
        Map<String, Integer> forgetful = new LinkedHashMap<>() {
            @Override
            protected boolean removeEldestEntry(Map.Entry<String, Integer> eldest) {
                return size() > 1;
            }
        };
        each(forgetful, "one");
        assertThat(each(forgetful, "one", "seven", "eleven")).isEqualTo(Map.of("one", 3, "seven", 5, "eleven", 6));
    }

    private Map<String, Integer> each(Map<String, Integer> memory, String... words) {
        return Remembered.each(memory, List.of(words), unknown -> {
            asked.add(Set.copyOf(unknown));
            return unknown.stream().collect(Collectors.toMap(word -> word, String::length));
        });
    }
}
