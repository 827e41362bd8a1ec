package dev.sunthread.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import dev.sunthread.catalog.judging.Question;
import dev.sunthread.cure.judging.CureVerdicts;
import dev.sunthread.demo.told.PlantTime;
import dev.sunthread.electrical.judging.TestVerdicts;
import dev.sunthread.journal.Restores;
import dev.sunthread.kernel.verdict.Outcome;
import dev.sunthread.ledger.Sealer;
import dev.sunthread.testing.SunthreadTest;
import java.io.ByteArrayInputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What the raw data of the demo plant say under its second revisions, counted beside the application. */
@SunthreadTest
class DemoVerdictTests {

    /** Wide enough that a load is baked in the drifting oven every day. */
    private static final int TRAYS = 6;

    private static final double DRIFT = 9;

    @Autowired
    Restores restores;

    @Autowired
    Sealer sealer;

    @Autowired
    CureVerdicts cures;

    @Autowired
    TestVerdicts tests;

    @Autowired
    MockMvc pages;

    private List<JsonNode> told = List.of();

    @Test
    void tellsTheStoriesOfTheOvenAndTheRig() throws Exception {
        String journal = DemoPlant.of(TRAYS).journal();
        told = journal.lines()
                .map(line -> (JsonNode) JsonMapper.shared().readTree(line))
                .toList();
        restores.run(new ByteArrayInputStream(journal.getBytes(StandardCharsets.UTF_8)), restored -> {});
        ovenStory();
        rigStory();
        pagesTellThem();
        assertThat(found("UV-365", Outcome.FAILED)).isZero();
        assertThat(found("DWELL-24", Outcome.PASSED))
                .isEqualTo(count("cure-run", run -> is(run, "recipe", "DWELL-24")));
    }

    /** The controller held TC-3 at 150 degC while it drifted, so the load fell below 145 degC once it read 4.4 K high. */
    private void ovenStory() {
        Predicate<JsonNode> suspect = run -> is(run, "recipe", "TIM-150")
                && is(run, "equipment", "OVEN-2")
                && at(run, "startedAt").isAfter(PlantTime.at(20, "05:06"))
                && at(run, "startedAt").isBefore(PlantTime.at(25, "05:06"));
        long drifted = count("cure-run", suspect);
        long surelyCold = count("cure-run", suspect.and(run -> drift(run) > 4.8));
        long perhapsCold = count("cure-run", suspect.and(run -> drift(run) > 4.0));
        assertThat(drifted).isPositive();
        assertThat(surelyCold).isPositive();
        assertThat(found("TIM-150", Outcome.FAILED)).isBetween((int) surelyCold, (int) perhapsCold);
        assertThat(found("TIM-150", Outcome.FAILED) + found("TIM-150", Outcome.NOT_PROVEN))
                .isEqualTo((int) drifted);
    }

    /** The pages of the equipment count the runs as the scopes do. */
    private void pagesTellThem() throws Exception {
        assertThat(text("/equipment?name=OVEN-2"))
                .contains("TC-3 temperature reads 9 K above the truth")
                .contains("cure run TIM-150 B failed " + found("TIM-150", Outcome.FAILED) + " run");
        Question rig = new Question("WAL-IV", "B", null, null, null, List.of());
        int lost = tests.found(rig, List.of(Outcome.NOT_PROVEN), sealer.seal()).size();
        assertThat(text("/equipment?name=RIG-W1"))
                .contains("current reads 2.6 % above the truth")
                .contains("not proven " + lost + " run");
    }

    private String text(String address) throws Exception {
        return pages.perform(get(URI.create(address)))
                .andReturn()
                .getResponse()
                .getContentAsString()
                .replaceAll("<[^>]*>", " ")
                .replaceAll("\\s+", " ");
    }

    private static double drift(JsonNode run) {
        Duration since = Duration.between(PlantTime.at(20, "05:06"), at(run, "startedAt"));
        Duration whole = Duration.between(PlantTime.at(20, "05:06"), PlantTime.at(25, "05:06"));
        return DRIFT * since.toMinutes() / whole.toMinutes();
    }

    /** A wall that read less than 2.6 % more than 4 A is not accepted any more; single milliamperes may go either way. */
    private void rigStory() {
        Predicate<JsonNode> suspect = run -> is(run, "specification", "WAL-IV")
                && is(run, "equipment", "RIG-W1")
                && is(run, "verdict", "pass")
                && at(run, "occurredAt").isAfter(PlantTime.at(33, "05:31"))
                && at(run, "occurredAt").isBefore(PlantTime.at(38, "05:31"));
        long surely = count("test-run", suspect.and(run -> shortCircuit(run) < 4.0 - 0.004));
        // the scatter of the points around no voltage leaves the current there open by about a hundredth of an ampere
        long perhaps = count("test-run", suspect.and(run -> shortCircuit(run) < 4.0 + 0.012));
        assertThat(surely).isPositive();
        Question question = new Question("WAL-IV", "B", null, null, null, List.of());
        assertThat(tests.found(question, List.of(Outcome.NOT_PROVEN), sealer.seal()))
                .hasSizeBetween((int) surely, (int) perhaps);
        assertThat(tests.found(question, List.of(Outcome.FAILED), sealer.seal()))
                .hasSize((int)
                        count("test-run", run -> is(run, "specification", "WAL-IV") && is(run, "verdict", "fail")));
    }

    /** The current at short circuit, less what the rig read too much, at 1000 W/m2 and 25 degrees Celsius. */
    private static double shortCircuit(JsonNode run) {
        JsonNode sweep = run.get("body").get("sweeps").get(0);
        double amperes = 0;
        for (int i = 1; i < sweep.get("volts").size(); i++) {
            double before = number(sweep.get("volts").get(i - 1));
            double behind = number(sweep.get("volts").get(i));
            if (before <= 0 && behind > 0) {
                double part = -before / (behind - before);
                amperes = number(sweep.get("amperes").get(i - 1)) * (1 - part)
                        + number(sweep.get("amperes").get(i)) * part;
            }
        }
        return amperes / 1.026 * 1000 / number(sweep.get("irradiance"))
                + 0.0025 * (25 - number(sweep.get("cellTemperature")));
    }

    private int found(String recipe, Outcome outcome) {
        return cures.found(new Question(recipe, "B", null, null, null, List.of()), List.of(outcome), sealer.seal())
                .size();
    }

    private long count(String kind, Predicate<JsonNode> wanted) {
        return told.stream()
                .filter(line -> kind.equals(line.path("kind").asString("")))
                .filter(wanted)
                .count();
    }

    private static boolean is(JsonNode run, String field, String value) {
        return value.equals(run.get("body").path(field).asString("").toLowerCase(Locale.ROOT))
                || value.equals(run.get("body").path(field).asString(""));
    }

    private static OffsetDateTime at(JsonNode run, String field) {
        JsonNode body = run.get("body").get(field);
        return OffsetDateTime.parse((body == null ? run.get(field) : body).stringValue());
    }

    private static double number(JsonNode text) {
        return Double.parseDouble(text.stringValue());
    }
}
