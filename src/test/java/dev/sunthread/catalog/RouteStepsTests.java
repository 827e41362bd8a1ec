package dev.sunthread.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.body.Unreadable;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.testing.Workshop;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** What a released route says of its operations, a structure of its places, and an item of its containers. */
@SunthreadTest
class RouteStepsTests {

    @Autowired
    Door door;

    @Autowired
    RouteSteps steps;

    @Autowired
    Structures structures;

    @Autowired
    Items items;

    @Autowired
    ItemLives lives;

    private Workshop workshop;

    @BeforeEach
    void released() {
        workshop = Workshop.released(door);
    }

    @Test
    void tellsEachOperationInOrderWithAllThatHoldsForIt() {
        workshop.plant().item("ADH2", "lot", null, "g");
        Map<String, Object> bond = bond();
        bond.put("alternates", List.of(Map.of("item", "ADH", "alternate", "ADH2")));
        route(bond, coat(Map.of("after", "bond", "atLeast", 600, "atMost", 3600)));
        List<RouteStep> route = steps.of(id("RCV"), Plant.at("12:00"));
        assertThat(route).extracting(RouteStep::operation).containsExactly("bond", "coat");
        assertThat(route.get(0).consumes()).singleElement().satisfies(taken -> {
            assertThat(taken.choices()).extracting(Item::number).containsExactly("ADH", "ADH2");
        });
        assertThat(route.get(0).demands()).extracting(Demand::code).containsExactly("BAKE", "PULL");
        assertThat(route.get(0).stations()).containsExactly("BOND");
        assertThat(route.get(0).mayBeDoneAt("OVEN")).isFalse();
        assertThat(route.get(0).cautions()).containsExactly(Caution.UV, Caution.CHEMICAL);
        assertThat(route.get(0).qualified()).isFalse();
        assertThat(route.get(1).onlineOnly()).isTrue();
        assertThat(route.get(1).qualified()).isTrue();
        assertThat(route.get(1).mayBeDoneAt("OVEN")).isTrue();
        assertThat(route.get(1).windows())
                .containsExactly(new RouteStep.Window("bond", Duration.ofMinutes(10), Duration.ofHours(1)));
    }

    @Test
    void tellsTheRouteInForce() {
        route(bond());
        assertThat(steps.of(id("RCV"), Plant.at("1 00:00").minusDays(1))).isEmpty();
        assertThat(steps.of(id("RCV"), "bond", Plant.at("12:00"))).isPresent();
        assertThat(steps.of(id("RCV"), "weld", Plant.at("12:00"))).isEmpty();
    }

    @Test
    void aWindowFollowsAnEarlierOperation() {
        assertThatThrownBy(() -> route(coat(Map.of("after", "bond", "atMost", 60)), bond()))
                .isInstanceOf(Unreadable.class)
                .hasMessageContaining("names \"bond\", which is no earlier operation");
        assertThatThrownBy(() -> route(bond(), coat(Map.of("after", "bond"))))
                .isInstanceOf(Unreadable.class)
                .hasMessageContaining("and atLeast are both missing");
        assertThatThrownBy(() -> route(bond(), coat(Map.of("after", "bond", "atLeast", 61, "atMost", 60))))
                .isInstanceOf(Unreadable.class)
                .hasMessageContaining("is less than atLeast");
    }

    @Test
    void tellsThePlacesOfAStructureAsTheyWereWritten() {
        workshop.plant()
                .say(
                        "structure",
                        "2 00:00",
                        Map.of(
                                "item",
                                "WALL",
                                "revision",
                                "A",
                                "positions",
                                List.of(
                                        Map.of("position", "R2", "items", List.of("RCV", "CELL")),
                                        Map.of("position", "R10", "items", List.of("RCV")),
                                        Map.of("position", "R1", "items", List.of("CELL", "ADH")))));
        assertThat(structures.placesOf(id("WALL"), Plant.at("12:00")))
                .extracting(place -> place.position()
                        + place.items().stream().map(Item::number).toList())
                .containsExactly("R2[RCV, CELL]", "R10[RCV]", "R1[CELL, ADH]");
        assertThat(structures.placesOf(id("RCV"), Plant.at("12:00"))).isEmpty();
    }

    @Test
    void tellsHowLongContainersOfAnItemMayBeUsed() {
        workshop.plant()
                .say(
                        "item",
                        "5 00:00",
                        Map.of(
                                "item",
                                "ADH",
                                "revision",
                                "B",
                                "name",
                                "Adhesive",
                                "tracking",
                                "lot",
                                "unitOfMeasure",
                                "g",
                                "openLife",
                                28_800,
                                "outLife",
                                172_800));
        assertThat(lives.of(id("ADH"), Plant.at("4 00:00"))).isEqualTo(new ItemLives.Life(null, null));
        assertThat(lives.of(id("ADH"), Plant.at("5 00:00")))
                .isEqualTo(new ItemLives.Life(Duration.ofHours(8), Duration.ofHours(48)));
    }

    private static Map<String, Object> bond() {
        Map<String, Object> bond =
                new TreeMap<>(Map.of("operation", "bond", "name", "Bond", "consumes", List.of("ADH")));
        bond.put("cures", List.of("BAKE"));
        bond.put("tests", List.of("PULL"));
        bond.put("stations", List.of("BOND"));
        bond.put("cautions", List.of("uv", "chemical"));
        return bond;
    }

    private static Map<String, Object> coat(Map<String, Object> window) {
        return Map.of(
                "operation", "coat", "name", "Coat", "onlineOnly", true, "qualified", true, "windows", List.of(window));
    }

    @SafeVarargs
    private void route(Map<String, Object>... operations) {
        workshop.plant()
                .say("route", "2 00:00", Map.of("item", "RCV", "revision", "A", "operations", List.of(operations)));
    }

    private long id(String item) {
        return items.find(item).orElseThrow().id();
    }
}
