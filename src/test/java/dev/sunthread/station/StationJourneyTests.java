package dev.sunthread.station;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.access.Role;
import dev.sunthread.ledger.Door;
import dev.sunthread.testing.Browser;
import dev.sunthread.testing.KnownPeople;
import dev.sunthread.testing.SunthreadTest;
import java.net.URI;
import java.time.Duration;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebDriver;
import org.openqa.selenium.chromium.HasCdp;
import org.openqa.selenium.support.ui.Select;
import org.openqa.selenium.support.ui.WebDriverWait;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The page at a station in a real browser, on a small screen, driven by keys alone as a scanner does. */
@Tag("browser")
@SunthreadTest(webEnvironment = WebEnvironment.RANDOM_PORT)
class StationJourneyTests {

    private static final Duration LONGEST = Duration.ofSeconds(30);

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
        KnownPeople people = new KnownPeople(context);
        people.add("pe-1", Role.PROCESS);
        people.add("op-1", Role.OPERATOR);
    }

    private Browser atStation(String station) throws Exception {
        Browser browser = Browser.open(800, 600).signIn(port, "pe-1");
        WebDriver page = browser.go(at("/device"));
        new Select(page.findElement(By.name("station"))).selectByValue(station);
        page.findElement(By.name("station")).submit();
        appears(page, ".notice[role=status]");
        page.findElement(By.cssSelector(".signed-in form button")).click();
        appears(page, ".signed-in > a");
        browser.go(at("/badge?to=/work"));
        type(page, "BADGE-op-1");
        appears(page, "[name=secret]:focus");
        type(page, KnownPeople.PIN);
        appears(page, "#text:focus");
        return browser;
    }

    /** A page that is asked for too soon would take back what the one before was sending. */
    private static void appears(WebDriver page, String what) {
        new WebDriverWait(page, LONGEST)
                .until(any -> !page.findElements(By.cssSelector(what)).isEmpty());
    }

    private URI at(String address) {
        return URI.create("http://127.0.0.1:" + port + address);
    }

    /** Keys go wherever the focus is, as from a scanner. */
    private static void type(WebDriver page, String text) {
        page.switchTo().activeElement().sendKeys(text + Keys.ENTER);
    }

    private static void says(WebDriver page, String verdict) {
        new WebDriverWait(page, LONGEST)
                .withMessage(() -> page.findElement(By.tagName("body")).getText())
                .until(any -> page.findElements(By.className("reply")).stream()
                        .anyMatch(shown -> shown.getText().contains(verdict)));
    }

    @Test
    void bondsAReceiverByKeysAloneAndRefusesALotOnHold() throws Exception {
        try (Browser browser = atStation("GLUE")) {
            WebDriver page = browser.go(at("/work"));
            type(page, "A-1");
            says(page, "Where is A-1 loaded?");
            type(page, "V1");
            says(page, "A-1 is loaded at V1.");
            type(page, "R0001");
            says(page, "R0001 is in hand for: bond.");
            assertThat(page.findElement(By.className("cautions")).getText()).contains("gloves", "safety rules");
            floor.hold("08:30", "C-1");
            type(page, "C-1");
            says(page, "C-1 is on hold");
            assertThat(page.findElement(By.cssSelector(".reply.refused .word")).getText())
                    .isEqualTo("Refused");
            assertThat(page.switchTo().activeElement().getAttribute("id")).isEqualTo("text");
            assertThat(page.findElement(By.cssSelector(".picks button"))
                            .getSize()
                            .getHeight())
                    .isGreaterThanOrEqualTo(48);
            assertThat(browser.complaints()).noneMatch(complaint -> complaint.contains("Content Security Policy"));
        }
    }

    @Test
    void keepsThirtyScansWhileTheServerIsAwayAndLosesAndDoublesNone() throws Exception {
        try (Browser browser = atStation("GLUE")) {
            WebDriver page = browser.go(at("/work"));
            type(page, "A-1");
            says(page, "Where is A-1 loaded?");
            type(page, "V1");
            says(page, "A-1 is loaded at V1.");
            online(page, false);
            for (int i = 1; i <= 15; i++) {
                type(page, "R%04d".formatted(i));
                type(page, "C-1");
            }
            new WebDriverWait(page, LONGEST)
                    .until(any ->
                            page.findElement(By.id("kept-count")).getText().equals("30"));
            assertThat(page.findElement(By.id("away")).getText()).contains("not yet accepted");
            assertThat(count("SELECT count(*) FROM production.birth")).isZero();
            online(page, true);
            new WebDriverWait(page, LONGEST)
                    .until(any -> count("SELECT count(*) FROM station.scan WHERE was_kept") >= 30);
            new WebDriverWait(page, LONGEST)
                    .until(any -> !page.findElement(By.id("away")).isDisplayed());
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
