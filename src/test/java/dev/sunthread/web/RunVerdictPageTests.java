package dev.sunthread.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import dev.sunthread.ledger.Door;
import dev.sunthread.testing.RawData;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.testing.Workshop;
import java.net.URI;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;

/** What pages of runs tell of their raw data. */
@SunthreadTest
class RunVerdictPageTests {

    @Autowired
    Door door;

    @Autowired
    MockMvc pages;

    private Workshop workshop;

    @BeforeEach
    void released() {
        workshop = Workshop.released(door);
    }

    @Test
    void aCureRunShowsItsProfileAgainstItsWindowAndItsVerdict() throws Exception {
        workshop.plant().say("recipe", "2 00:00", RawData.bakeRevision("B", "20"));
        workshop.plant().say("cure-run", "10:00", RawData.bake("10", "C-7", "TC-1", "150", "RCV R1"));
        workshop.plant().say("recipe", "20 00:00", RawData.bakeRevision("C", "25"));
        assertThat(text("/cure-run?name=C-7"))
                .contains("Revision C for comparison failed", "Revision B in force when it began passed")
                .contains("Time from 145 to 155 degC of sensor TC-1 20.", "5 readings")
                .contains("TC-1 temperature 5 25 150 60 degC")
                .contains("window of the recipe");
        assertThat(html("/cure-run?name=C-7")).contains("<polyline", "table=profile");
        assertThat(html("/cure-run?name=C-7&table=profile&format=csv")).contains("TC-1,1800.0,60.0,degC");
    }

    @Test
    void aVerdictIsSaidInTheReadersLanguage() throws Exception {
        workshop.plant().say("recipe", "2 00:00", RawData.bakeRevision("B", "20"));
        workshop.plant().say("cure-run", "10:00", RawData.bake("10", "C-7", "TC-1", "141", "RCV R1"));
        assertThat(text("/cure-run?name=C-7"))
                .contains("Time from 145 to 155 degC of sensor TC-1 is 0 min, but at least 20 min demanded");
        assertThat(inGerman("/cure-run?name=C-7"))
                .contains("Zeit bei 145 bis 155 °C an Fühler TC-1 ist 0 min, verlangt ist mindestens 20 min")
                .contains("Minuten nach dem Beginn", "Fenster des Rezepts", "höchstens 160 degC");
    }

    @Test
    void aTestRunShowsItsCurvesNumbersAndVerdict() throws Exception {
        workshop.plant().say("specification", "2 00:00", RawData.powerRevision("B", "0.5"));
        workshop.plant().say("test-run", "10:00", RawData.swept("T-7", "RCV R1", "pass", RawData.Points.of(1)));
        assertThat(text("/test-run?name=T-7"))
                .contains(
                        "Revision B in force when it began passed",
                        "Maximum power is 0.59443 to 0.60798 W",
                        "at least 0.5 W")
                .contains("Sweep light is judged as measured. Maximum power by polynomial of order 4 at most")
                .contains(
                        "Short-circuit current 1 A",
                        "Fill factor",
                        "by least squares over the points around the maximum",
                        "91 points")
                .contains("One diode by implicit residual", "One diode by model current less measured current")
                .contains("voltage (V) current (A) power (W) -0.1 1 -0.1");
        workshop.plant()
                .say(
                        "verification",
                        "12:00",
                        RawData.check("RIG", Map.of("quantity", "current", "percent", "30"), false));
        assertThat(text("/equipment?name=RIG"))
                .contains("current reads 30 % above the truth", "test run T-7 PULL not proven")
                .contains("Judged since the last good check", "test run PULL B not proven 1 run");
    }

    @Test
    void everyResultOfAUnitStandsInAChain() throws Exception {
        workshop.plant().say("specification", "2 00:00", RawData.powerRevision("B", "0.5"));
        workshop.plant().say("test-run", "10:00", RawData.swept("T-1", "RCV R1", "fail", RawData.Points.of(0.5)));
        workshop.plant().say("test-run", "10:10", RawData.swept("T-2", "RCV R1", "pass", RawData.Points.of(1)));
        assertThat(text("/test-run?name=T-1"))
                .contains("T-2 RIG pass passed failed, then passed, with nothing recorded as done between");
        assertThat(html("/test-run?name=T-1&table=chain&format=csv")).contains("T-1,RIG,fail,failed,no");
    }

    @Test
    void aSweepThatCannotBeUsedSaysWhy() throws Exception {
        Map<String, Object> body = RawData.swept(
                "T-8", "RCV R1", "pass", new RawData.Points(java.util.List.of("0", "1"), java.util.List.of("1", "0")));
        workshop.plant().say("test-run", "10:00", body);
        assertThat(text("/test-run?name=T-8")).contains("A sweep of 2 voltages and 2 currents is too short");
    }

    @Test
    void aDarkSweepHasNumbersOfItsOwn() throws Exception {
        Map<String, Object> body = new java.util.TreeMap<>(Workshop.pulled("T-9", "RCV R1", "pass"));
        body.put("sweeps", java.util.List.of(RawData.darkSweep()));
        workshop.plant().say("test-run", "10:00", body);
        assertThat(text("/test-run?name=T-9"))
                .contains("Sweep dark, in the dark", "Forward voltage at 0.59645 A 0.6 V")
                .contains("Slope resistance around no voltage in the dark");
    }

    @Test
    void aUnitCuredTwiceShowsWhatBothDidTogether() throws Exception {
        workshop.plant().say("recipe", "2 00:00", RawData.bakeRevision("B", "30"));
        workshop.plant().say("cure-run", "10:00", RawData.bake("10", "C-7", "TC-1", "150", "RCV R1"));
        workshop.plant().say("cure-run", "12:00", RawData.bake("12", "C-8", "TC-1", "150", "RCV R1"));
        assertThat(text("/cure-run?name=C-7"))
                .contains("in force when it began failed", "Bond by bond")
                .contains("RCV R1 C-7 C-8 passed All 2 criteria are met");
        assertThat(html("/cure-run?name=C-7&table=bonds&format=csv")).contains("RCV,R1,", "C-7 | C-8", "passed");
    }

    private String text(String address) throws Exception {
        return html(address).replaceAll("<[^>]*>", " ").replaceAll("\\s+", " ");
    }

    private String inGerman(String address) throws Exception {
        return pages.perform(get(URI.create(address)).locale(Locale.GERMAN))
                .andReturn()
                .getResponse()
                .getContentAsString()
                .replaceAll("<[^>]*>", " ")
                .replaceAll("\\s+", " ");
    }

    private String html(String address) throws Exception {
        return pages.perform(get(URI.create(address))).andReturn().getResponse().getContentAsString();
    }
}
