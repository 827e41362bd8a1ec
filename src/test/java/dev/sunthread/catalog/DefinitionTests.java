package dev.sunthread.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.body.Unreadable;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.testing.Workshop;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Definitions of what is demanded, by which equipment, and of positions. */
@SunthreadTest
class DefinitionTests {

    @Autowired
    Door door;

    @Autowired
    JdbcClient jdbc;

    private Workshop workshop;

    @BeforeEach
    void released() {
        workshop = Workshop.released(door);
    }

    @Test
    void releasesARevisionOnceAndTheNextUnderTheSameCode() {
        assertThatThrownBy(() -> workshop.define("recipe", "BAKE"))
                .isInstanceOf(Unreadable.class)
                .hasMessageContaining("revision \"A\" is released already");
        workshop.plant().say("recipe", "2 00:00", Map.of("recipe", "BAKE", "revision", "B", "name", "Longer"));
        assertThat(
                        list(
                                "SELECT revision FROM catalog.recipe_revision JOIN catalog.recipe c ON c.id = recipe ORDER BY 1"))
                .containsExactly("A", "B");
    }

    @Test
    void aFaultIsSeenByReleasedTests() {
        workshop.plant().say("fault", "2 00:00", fault("SOFT", "PULL", "PULL"));
        assertThat(list("""
                        SELECT f.code || ' by ' || s.code FROM catalog.fault f JOIN catalog.fault_revision r ON r.fault = f.id
                        JOIN catalog.fault_test t USING (entry) JOIN catalog.specification s ON s.id = t.specification
                        """)).containsExactly("SOFT by PULL");
        isUnreadable("fault", fault("HARD", "PUSH"), "body.tests[0]: names specification \"PUSH\"");
    }

    private static Map<String, Object> fault(String code, String... tests) {
        return Map.of("fault", code, "revision", "A", "name", code, "tests", List.of(tests));
    }

    @Test
    void aRouteTellsWhatItsOperationsDemandAndReach() {
        workshop.plant().item("ADH2", "lot", null, "g");
        Map<String, Object> bond =
                new TreeMap<>(Map.of("operation", "bond", "name", "Bond", "consumes", List.of("ADH")));
        bond.put("alternates", List.of(Map.of("item", "ADH", "alternate", "ADH2")));
        bond.put("cures", List.of("BAKE", "BAKE"));
        bond.put("tests", List.of("PULL"));
        bond.put("reach", "unit-alone");
        workshop.plant().say("route", "2 00:00", route(bond, Map.of("operation", "coat", "name", "Coat")));
        assertThat(list("SELECT operation || ' ' || unit_alone FROM catalog.route_operation ORDER BY 1"))
                .containsExactly("bond true", "coat false");
        assertThat(list("SELECT coalesce(r.code, s.code) FROM catalog.route_demand d"
                        + " LEFT JOIN catalog.recipe r ON r.id = d.recipe"
                        + " LEFT JOIN catalog.specification s ON s.id = d.specification ORDER BY 1"))
                .containsExactly("BAKE", "PULL");
        assertThat(list("SELECT i.number FROM catalog.route_alternate a JOIN catalog.item i ON i.id = a.alternate"))
                .containsExactly("ADH2");
    }

    @Test
    void anAlternateStandsForAnItemThatIsTakenIn() {
        Map<String, Object> bond = Map.of(
                "operation", "bond", "name", "Bond", "alternates", List.of(Map.of("item", "ADH", "alternate", "CELL")));
        isUnreadable("route", route(bond), "names \"ADH\", which the operation does not take in");
        Map<String, Object> itself = Map.of(
                "operation",
                "bond",
                "name",
                "Bond",
                "consumes",
                List.of("ADH"),
                "alternates",
                List.of(Map.of("item", "ADH", "alternate", "ADH")));
        isUnreadable("route", route(itself), "is the item itself");
    }

    @SafeVarargs
    private static Map<String, Object> route(Map<String, Object>... operations) {
        return Map.of("item", "RCV", "revision", "A", "operations", List.of(operations));
    }

    @Test
    void aLotIsMadeOfLots() {
        workshop.plant().say("structure", "2 00:00", structure("ADH", "CELL"));
        isUnreadable("structure", structure("CELL", "RCV"), "tracked by serial, as a component of a lot");
        workshop.plant().item("RAG", "none", null, "pcs");
        isUnreadable("structure", structure("RAG", "CELL"), "whose pieces are not told apart");
    }

    private static Map<String, Object> structure(String item, String part) {
        return Map.of(
                "item",
                item,
                "revision",
                "A",
                "positions",
                List.of(Map.of("position", "base", "items", List.of(part))));
    }

    @Test
    void aStationTellsWhatItsPositionsLeaveBehindAndMix() {
        workshop.plant().say("station", "2 00:00", station("B", "V1"));
        assertThat(list("SELECT p.code || ' ' || c.uses FROM catalog.position_carry_over c"
                        + " JOIN catalog.position p ON p.id = c.position"))
                .containsExactly("V1 3");
        assertThat(
                        list(
                                "SELECT p.code FROM catalog.position_mixing_back m JOIN catalog.position p ON p.id = m.position"))
                .containsExactly("V1");
        isUnreadable("station", station("C", "V9"), "names position \"V9\", which station \"BOND\" does not have");
    }

    private static Map<String, Object> station(String revision, String position) {
        Map<String, Object> body = new TreeMap<>(
                Map.of("station", "BOND", "revision", revision, "name", "Bonding", "clockUncertainty", "10"));
        body.put("carryOver", List.of(Map.of("position", position, "uses", 3, "evidence", "trial")));
        body.put("mixingBack", List.of(position));
        return body;
    }

    private void isUnreadable(String kind, Map<String, Object> body, String reason) {
        assertThatThrownBy(() -> workshop.plant().say(kind, "3 00:00", body))
                .isInstanceOf(Unreadable.class)
                .hasMessageContaining(reason);
    }

    private List<String> list(String sql) {
        return jdbc.sql(sql).query((row, number) -> row.getString(1)).list();
    }
}
