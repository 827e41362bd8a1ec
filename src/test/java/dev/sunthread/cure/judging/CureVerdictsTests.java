package dev.sunthread.cure.judging;

import static dev.sunthread.testing.Workshop.rules;
import static dev.sunthread.testing.Workshop.sentences;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.sunthread.catalog.judging.KeptPhrase;
import dev.sunthread.kernel.Refused;
import dev.sunthread.ledger.Acceptance;
import dev.sunthread.ledger.Door;
import dev.sunthread.testing.RawData;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.testing.Workshop;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Cure runs judged from their raw profiles. */
@SunthreadTest
class CureVerdictsTests {

    @Autowired
    Door door;

    @Autowired
    JdbcClient jdbc;

    private Workshop workshop;

    @BeforeEach
    void released() {
        workshop = Workshop.released(door);
        workshop.plant().say("recipe", "2 00:00", RawData.bakeRevision("B", "20"));
    }

    @Test
    void bakeThatKeptItsRecipePasses() {
        assertThat(bake("10", "C1", "TC-1", "150").findings()).isEmpty();
        assertThat(standing()).containsExactly("PASSED");
    }

    /** Ten minutes in the oven, told with half an hour of readings. */
    @Test
    void readingsOutsideTheRunAreAFindingAndDoNotCount() {
        Map<String, Object> body = new TreeMap<>(RawData.bake("10", "C1", "TC-1", "150", "RCV R1"));
        body.put("startedAt", String.valueOf(body.get("startedAt")).replace(":30:00", ":50:00"));
        Acceptance told = workshop.plant().say("cure-run", "10:00", body);
        assertThat(rules(told)).contains("readings-lie-within-their-run", "cure-keeps-its-recipe");
        assertThat(standing()).containsExactly("FAILED");
    }

    @Test
    void bakeThatBrokeItsRecipeIsAFinding() {
        assertThat(sentences(bake("10", "C1", "TC-1", "141")))
                .containsExactly(
                        "Cure run C1 broke recipe BAKE: Time from 145 to 155 degC of sensor TC-1 is 0 min, but at"
                                + " least 20 min demanded");
    }

    @Test
    void runWithoutProfileIsNotProvenAndMeetsNoDemandWhereLimitsAreReleased() {
        workshop.demandingRoute();
        workshop.step("09:00", "bond", "RCV R1");
        workshop.bake("10", "C1", "RCV R1");
        workshop.pull("10:30", "T1", "RCV R1", "pass");
        assertThat(standing()).containsExactly("NOT_PROVEN");
        assertThat(sentences(workshop.step("11:00", "coat", "RCV R1")))
                .containsExactly("Unit RCV R1 has no cure by recipe BAKE, which operation bond demands: cure run C1 is"
                        + " not proven: No profile of the run is recorded");
        assertThatThrownBy(() -> workshop.ask("step", "11:00", Workshop.stepped("coat", "RCV R1")))
                .isInstanceOf(Refused.class)
                .hasMessageEndingWith("No profile of the run is recorded")
                .extracting("remedy")
                .asString()
                .startsWith("Record what was measured");
    }

    @Test
    void revisionReleasedLateJudgesWhatWasDoneSinceItIsInForce() {
        bake("10", "C1", "TC-1", "150");
        assertThat(sentences(workshop.plant().say("recipe", "3 00:00", RawData.bakeRevision("C", "50"))))
                .containsExactly("1 cure runs since this revision came into force broke it");
        assertThat(standing()).containsExactly("FAILED");
    }

    @Test
    void verdictsThatWereEmptiedAreJudgedAnewBeforeADemandIsAskedFor() {
        workshop.demandingRoute();
        workshop.step("09:00", "bond", "RCV R1");
        bake("10", "C1", "TC-1", "150");
        workshop.pull("10:30", "T1", "RCV R1", "pass");
        jdbc.sql("DELETE FROM cure.verdict").update();
        assertThat(standing()).containsExactly("NOT_PROVEN");
        assertThat(workshop.step("11:00", "coat", "RCV R1").findings()).isEmpty();
        assertThat(standing()).containsExactly("PASSED");
    }

    @Test
    void demandIsNotMetByABakeThatBrokeItsRecipe() {
        workshop.demandingRoute();
        workshop.step("09:00", "bond", "RCV R1");
        bake("10", "C1", "TC-1", "141");
        workshop.pull("10:30", "T1", "RCV R1", "pass");
        assertThat(rules(workshop.step("11:00", "coat", "RCV R1")))
                .containsExactly("demanded-cure-is-done-before-the-next-operation");
        bake("12", "C2", "TC-1", "150");
        assertThat(workshop.step("13:00", "coat", "RCV R1").findings()).isEmpty();
    }

    @Test
    void sensorFoundToReadHighIsCorrectedSinceTheLastGoodCheck() {
        bake("10", "C1", "TC-3", "150");
        check("10:30", null, true);
        bake("12", "C2", "TC-3", "150");
        bake("14", "C3", "TC-1", "150");
        Map<String, Object> reads9High = Map.of("sensor", "TC-3", "quantity", "temperature", "offset", "9");
        assertThat(sentences(check("16:00", reads9High, false)))
                .containsExactly(
                        "1 cure runs in OVEN since its last good check kept their recipe with too little margin"
                                + " for the error that was found");
        assertThat(standing()).containsExactly("PASSED", "NOT_PROVEN", "PASSED");
    }

    @Test
    void sensorThatAlwaysReadHighShowsTheBakeWasTooCold() {
        bake("10", "C1", "TC-3", "150");
        check("16:00", Map.of("sensor", "TC-3", "quantity", "temperature", "offset", "9", "onset", "always"), false);
        assertThat(standing()).containsExactly("FAILED");
    }

    @Test
    void unknownUnitOfASensorIsNotProven() {
        Map<String, Object> body = RawData.bake("10", "C1", "TC-1", "150", "RCV R1");
        @SuppressWarnings("unchecked")
        Map<String, Object> series =
                (Map<String, Object>) ((List<?>) Objects.requireNonNull(body.get("profile"))).get(0);
        Map<String, Object> inFahrenheit = new java.util.TreeMap<>(series);
        inFahrenheit.put("unitOfMeasure", "degF");
        body.put("profile", List.of(inFahrenheit));
        workshop.plant().say("cure-run", "10:00", body);
        assertThat(jdbc.sql("SELECT said FROM cure.standing")
                        .query((row, number) ->
                                KeptPhrase.read(row.getString(1)).english())
                        .list())
                .containsExactly("The profile cannot be used: Sensor TC-1 reads in \"degF\", which is not known");
    }

    /** Light of 110 and 90 mW/cm2 before and after, for half an hour: 162 to 198 J/cm2. */
    @Test
    void doseIsBracketedByTheRadiometer() {
        Map<String, Object> light = Map.of(
                "recording",
                Map.of("longestGap", "10", "fastestChange", "1000"),
                "dose",
                Map.of("least", "160000"),
                "radiometerHours",
                "24");
        workshop.plant()
                .say(
                        "recipe",
                        "2 01:00",
                        Map.of("recipe", "BAKE", "revision", "L", "name", "Light", "terms", Map.of("light", light)));
        radiometer("09:00", "110");
        workshop.bake("10", "C1", "RCV R1");
        assertThat(standing()).containsExactly("NOT_PROVEN");
        radiometer("11:00", "90");
        assertThat(standing()).containsExactly("PASSED");
    }

    /** Dimmer than the reading known first: 90 and 70 mW/cm2 give 126 to 162 J/cm2 where 150 J/cm2 are demanded. */
    @Test
    void radiometerReadingToldLateIsCountedForTheRunsNextToIt() {
        workshop.plant()
                .say(
                        "recipe",
                        "2 01:00",
                        Map.of("recipe", "BAKE", "revision", "L", "name", "Light", "terms", lightOf("150000")));
        radiometer("08:00", "110");
        workshop.bake("10", "C1", "RCV R1");
        radiometer("11:00", "90");
        assertThat(standing()).containsExactly("PASSED");
        assertThat(sentences(radiometer("09:00", "70")))
                .containsExactly("1 cure runs in OVEN are no longer shown to have kept their recipe by what the"
                        + " radiometer read");
        assertThat(standing()).containsExactly("NOT_PROVEN");
        workshop.plant().undo("12:00", workshop.plant().lastId());
        assertThat(standing()).containsExactly("PASSED");
    }

    @Test
    void radiometerReadingThatShowsTooLittleLightIsAFinding() {
        workshop.plant()
                .say(
                        "recipe",
                        "2 01:00",
                        Map.of("recipe", "BAKE", "revision", "L", "name", "Light", "terms", lightOf("500000")));
        radiometer("09:00", "110");
        workshop.bake("10", "C1", "RCV R1");
        assertThat(sentences(radiometer("11:00", "90")))
                .containsExactly("1 cure runs in OVEN broke their recipe by what this check found");
    }

    /** Two bakes of 20 minutes at 150 degC each are good for 40. */
    @Test
    void unitThatIsCuredTwiceIsJudgedByBothTogether() {
        workshop.demandingRoute();
        workshop.plant().say("recipe", "2 02:00", RawData.bakeRevision("M", "30"));
        workshop.step("09:00", "bond", "RCV R1");
        workshop.pull("09:10", "T1", "RCV R1", "pass");
        bake("10", "C1", "TC-1", "150");
        assertThat(rules(workshop.step("10:30", "coat", "RCV R1")))
                .containsExactly("demanded-cure-is-done-before-the-next-operation");
        bake("12", "C2", "TC-1", "150");
        assertThat(workshop.step("13:00", "coat", "RCV R1").findings()).isEmpty();
    }

    @Test
    void peakOfOneCureStaysWhateverTheOtherDid() {
        workshop.demandingRoute();
        workshop.step("09:00", "bond", "RCV R1");
        workshop.pull("09:10", "T1", "RCV R1", "pass");
        bake("10", "C1", "TC-1", "170");
        assertThat(sentences(bake("12", "C2", "TC-1", "150")))
                .containsExactly("1 units were cured more than once by recipe BAKE, which broke it: Peak over 2 cures"
                        + " together is 170 degC, but at most 160 degC demanded");
        assertThat(sentences(workshop.step("13:00", "coat", "RCV R1")))
                .singleElement()
                .asString()
                .contains("cure run C1, C2 failed for it: Peak over 2 cures together is 170 degC");
    }

    @Test
    void sensorNearestToTheBondCountsWhereTheRecipeSaysSo() {
        workshop.demandingRoute();
        workshop.plant().say("recipe", "2 02:00", nearest(RawData.bakeRevision("N", "20")));
        workshop.step("09:00", "bond", "RCV R1", "RCV R2");
        workshop.pull("09:10", "T1", "RCV R1", "pass");
        workshop.pull("09:10", "T2", "RCV R2", "pass");
        workshop.plant().say("cure-run", "10:00", bakeWithACorner());
        assertThat(standing()).containsExactly("FAILED");
        assertThat(workshop.step("11:00", "coat", "RCV R1").findings()).isEmpty();
        assertThat(sentences(workshop.step("11:00", "coat", "RCV R2")))
                .singleElement()
                .asString()
                .endsWith("cure run C1 failed for it: Time from 145 to 155 degC of sensor TC-9 is 0 min, but at least"
                        + " 20 min demanded");
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> nearest(Map<String, Object> revision) {
        Map<String, Object> terms = new TreeMap<>((Map<String, Object>) Objects.requireNonNull(revision.get("terms")));
        Map<String, Object> thermal = new TreeMap<>((Map<String, Object>) Objects.requireNonNull(terms.get("thermal")));
        thermal.put("sensors", "nearest");
        terms.put("thermal", thermal);
        Map<String, Object> said = new TreeMap<>(revision);
        said.put("terms", terms);
        return said;
    }

    /** Shelf 1 is warm, shelf 9 is cold; R1 lies on shelf 2, R2 on shelf 8. */
    @SuppressWarnings("unchecked")
    private static Map<String, Object> bakeWithACorner() {
        Map<String, Object> warm = RawData.bake("10", "C1", "TC-1", "150", "RCV R1");
        Map<String, Object> cold = RawData.bake("10", "C1", "TC-9", "120", "RCV R1");
        Map<String, Object> body = new TreeMap<>(warm);
        body.put("units", List.of(at("RCV R1", "shelf 2"), at("RCV R2", "shelf 8")));
        body.put(
                "profile",
                List.of(
                        placed(
                                ((List<Map<String, Object>>) Objects.requireNonNull(warm.get("profile"))).get(0),
                                "shelf 1"),
                        placed(
                                ((List<Map<String, Object>>) Objects.requireNonNull(cold.get("profile"))).get(0),
                                "shelf 9")));
        return body;
    }

    private static Map<String, Object> at(String unit, String position) {
        return placed(Workshop.unit(unit), position);
    }

    private static Map<String, Object> placed(Map<String, Object> thing, String position) {
        Map<String, Object> placed = new TreeMap<>(thing);
        placed.put("position", position);
        return placed;
    }

    private static Map<String, Object> lightOf(String least) {
        return Map.of(
                "light",
                Map.of(
                        "recording",
                        Map.of("longestGap", "10", "fastestChange", "1000"),
                        "dose",
                        Map.of("least", least)));
    }

    private Acceptance radiometer(String time, String irradiance) {
        Map<String, Object> body = new java.util.TreeMap<>(RawData.check("OVEN", null, true));
        body.put("radiometer", Map.of("irradiance", irradiance, "band", "365 nm", "lampHours", "120"));
        return workshop.plant().say("verification", time, body);
    }

    private Acceptance bake(String hour, String run, String sensor, String celsius) {
        return workshop.plant().say("cure-run", hour + ":00", RawData.bake(hour, run, sensor, celsius, "RCV R1"));
    }

    private Acceptance check(String time, @Nullable Map<String, Object> error, boolean good) {
        return workshop.plant().say("verification", time, RawData.check("OVEN", error, good));
    }

    private List<String> standing() {
        return jdbc.sql("SELECT outcome FROM cure.standing ORDER BY entry")
                .query(String.class)
                .list();
    }
}
