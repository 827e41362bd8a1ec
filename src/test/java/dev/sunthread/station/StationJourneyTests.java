package dev.sunthread.station;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.ledger.Door;
import dev.sunthread.testing.Browser;
import dev.sunthread.testing.SunthreadTest;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.JavascriptExecutor;
import org.openqa.selenium.WebDriver;
import org.openqa.selenium.chromium.HasCdp;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The page at a station in a real browser, on a small screen, driven by keys alone as a scanner does. */
@Tag("browser")
@SunthreadTest(webEnvironment = WebEnvironment.RANDOM_PORT)
class StationJourneyTests {

    @LocalServerPort
    int port;

    @Autowired
    Door door;

    @Autowired
    ApplicationContext context;

    @Autowired
    JdbcClient jdbc;

    private ShopFloor floor;

    @BeforeEach
    void release() {
        floor = ShopFloor.released(door);
        StationDevice.people(context);
    }

    @Test
    void bondsAReceiverByKeysAloneAndRefusesALotOnHold() throws Exception {
        try (StationDevice device = StationDevice.at(port, "GLUE")) {
            WebDriver page = device.page();
            device.scan("A-1", "Where is A-1 loaded?")
                    .scan("V1", "A-1 is loaded at V1.")
                    .scan("R0001", "R0001 is in hand for: bond.");
            assertThat(page.findElement(By.className("cautions")).getText()).contains("gloves", "safety rules");
            assertThat(largest(page)).containsExactly("next");
            assertThat(pixels(page, ".loads .serial")).isGreaterThanOrEqualTo(24);
            floor.hold("08:30", "C-1");
            device.scan("C-1", "C-1 is on hold").picture("16-refused");
            assertThat(largest(page)).containsExactly("remedy", "next");
            assertThat(page.findElement(By.cssSelector(".reply.refused .word")).getText())
                    .isEqualTo("Refused");
            assertThat(page.switchTo().activeElement().getAttribute("id")).isEqualTo("text");
            assertThat(page.findElement(By.cssSelector(".picks button"))
                            .getSize()
                            .getHeight())
                    .isGreaterThanOrEqualTo(48);
            assertThat(device.browser().complaints())
                    .noneMatch(complaint -> complaint.contains("Content Security Policy"));
        }
    }

    /** The classes of what is written largest, without pictures of signs. */
    @SuppressWarnings("unchecked")
    private static List<String> largest(WebDriver page) {
        return (List<String>) Objects.requireNonNull(((JavascriptExecutor) page).executeScript("""
                const size = one => parseFloat(getComputedStyle(one).fontSize);
                const texts = [...document.querySelectorAll("main *:not([aria-hidden]):not(input)")].filter(one =>
                  one.checkVisibility() && [...one.childNodes].some(node => node.nodeType === 3 && node.data.trim() !== ""));
                const most = Math.max(...texts.map(size));
                return texts.filter(one => size(one) === most).map(one => one.className);
                """));
    }

    private static double pixels(WebDriver page, String what) {
        return Double.parseDouble(
                page.findElement(By.cssSelector(what)).getCssValue("font-size").replace("px", ""));
    }

    @Test
    void saysThatItIsThereShowsAStopWithoutAScanAndSaysThatItCloses() throws Exception {
        try (StationDevice device = StationDevice.at(port, "GLUE")) {
            device.scan("A-1", "Where is A-1 loaded?").scan("V1", "A-1 is loaded at V1.");
            isHeard(device, true);
            floor.hold("08:30", "A-1");
            device.appears(".stop");
            device.browser().go(device.address("/account"));
            isHeard(device, false);
        }
    }

    private void isHeard(StationDevice device, boolean open) {
        Browser.waiting(device.page())
                .until(any -> count("SELECT count(*) FROM station.page WHERE kept = 0 AND is_open = " + open) == 1);
    }

    @Test
    void keepsThirtyScansWhileTheServerIsAwayAndLosesAndDoublesNone() throws Exception {
        try (StationDevice device = StationDevice.at(port, "GLUE")) {
            WebDriver page = device.page();
            device.scan("A-1", "Where is A-1 loaded?").scan("V1", "A-1 is loaded at V1.");
            online(page, false);
            for (int i = 1; i <= 15; i++) {
                device.type("R%04d".formatted(i)).type("C-1");
            }
            Browser.waiting(page)
                    .until(any ->
                            page.findElement(By.id("kept-count")).getText().equals("30"));
            assertThat(page.findElement(By.id("away")).getText()).contains("not yet accepted");
            assertThat(count("SELECT count(*) FROM production.birth")).isZero();
            online(page, true);
            Browser.waiting(page).until(any -> count("SELECT count(*) FROM station.scan WHERE was_kept") >= 30);
            Browser.waiting(page).until(any -> !page.findElement(By.id("away")).isDisplayed());
            assertThat(count("SELECT count(*) FROM production.birth")).isEqualTo(15);
            assertThat(count("SELECT count(*) FROM production.step WHERE operation = 'bond'"))
                    .isEqualTo(15);
            assertThat(count("SELECT count(*) FROM station.scan WHERE was_kept"))
                    .isEqualTo(30);
        }
    }

    private static void online(WebDriver page, boolean online) {
        ((HasCdp) page).executeCdpCommand("Network.enable", Map.of());
        ((HasCdp) page)
                .executeCdpCommand(
                        "Network.emulateNetworkConditions",
                        Map.of("offline", !online, "latency", 0, "downloadThroughput", -1, "uploadThroughput", -1));
    }

    private int count(String sql) {
        return jdbc.sql(sql).query(Integer.class).single();
    }
}
