package dev.sunthread.web;

import static dev.sunthread.testing.Workshop.sentences;
import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import dev.sunthread.ledger.Acceptance;
import dev.sunthread.ledger.Door;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.testing.Workshop;
import java.net.URI;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;

/** Process values of steps against the limits of routes. */
@SunthreadTest
class ValuePageTests {

    @Autowired
    Door door;

    @Autowired
    MockMvc pages;

    private Workshop workshop;

    @BeforeEach
    void released() {
        workshop = Workshop.released(door);
        Map<String, Object> mass = Map.of("value", "mass", "unitOfMeasure", "mg", "least", "8", "most", "12");
        Map<String, Object> bond = Map.of("operation", "bond", "name", "Bond", "values", List.of(mass));
        workshop.plant().say("route", "1 00:00", Map.of("item", "RCV", "revision", "A", "operations", List.of(bond)));
    }

    @Test
    void aValueOutsideItsLimitsIsAFinding() {
        assertThat(bond("09:00", "R1", "12", "mg").findings()).isEmpty();
        assertThat(sentences(bond("09:10", "R2", "12.1", "mg")))
                .containsExactly("Operation bond was done with mass 12.1 mg; the route demands from 8 to 12 mg");
        assertThat(sentences(bond("09:20", "R3", "0.01", "g"))).hasSize(1);
    }

    @Test
    void aPageShowsItsCourseItsLimitsAndTracesWhatIsOutside() throws Exception {
        bond("09:00", "R1", "10", "mg");
        bond("09:10", "R2", "12.1", "mg");
        assertThat(text("/values")).contains("bond mass 2 10 12.1 mg");
        assertThat(text("/value?operation=bond&name=mass"))
                .contains(
                        "demands from 8 to 12 mg",
                        "Trace steps above or at 12",
                        "BOND 12.1 mg RCV R2",
                        "1 to 2 of 2 steps")
                .contains("within limits");
    }

    private Acceptance bond(String time, String serial, String value, String unit) {
        return workshop.plant()
                .say(
                        "step",
                        time,
                        Map.of(
                                "operation",
                                "bond",
                                "station",
                                "BOND",
                                "units",
                                List.of(Map.of("item", "RCV", "serial", serial)),
                                "values",
                                List.of(Map.of("name", "mass", "value", value, "unitOfMeasure", unit))));
    }

    private String text(String address) throws Exception {
        return pages.perform(get(URI.create(address)))
                .andReturn()
                .getResponse()
                .getContentAsString()
                .replaceAll("<[^>]*>", " ")
                .replaceAll("\\s+", " ");
    }
}
