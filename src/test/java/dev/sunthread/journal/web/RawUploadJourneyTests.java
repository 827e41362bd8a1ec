package dev.sunthread.journal.web;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.access.Role;
import dev.sunthread.ledger.Door;
import dev.sunthread.testing.Browser;
import dev.sunthread.testing.KnownPeople;
import dev.sunthread.testing.RawData;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.testing.Workshop;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.WebDriver;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;

/** Raw files of rigs and loggers taken in over the page, in a real browser. */
@Tag("browser")
@SunthreadTest(webEnvironment = WebEnvironment.RANDOM_PORT)
class RawUploadJourneyTests {

    private static final String MAPPING = """
            volts: U [V]
            amperes: I [A]
            serial: SN
            item = RCV
            specification = PULL
            equipment = RIG
            verdict = pass
            sweep = light
            """;

    private static final String SWEEP = """
            run;SN;endedAt;U [V];I [A]
            F1;R1;2026-03-10T10:00:00+01:00;-0,1;1,0
            F1;R1;2026-03-10T10:00:00+01:00;0;1,0
            F1;R1;2026-03-10T10:00:00+01:00;0,4;0,99
            F1;R1;2026-03-10T10:00:00+01:00;0,6;0,97
            F1;R1;2026-03-10T10:00:00+01:00;0,7;0,7
            F1;R1;2026-03-10T10:00:00+01:00;0,8;-0,2
            """;

    private static final String PROFILE = """
            run,recipe,equipment,startedAt,endedAt,units,sensor,position,quantity,unitOfMeasure,seconds,reading
            P1,BAKE,OVEN,2026-03-10T09:30:00+01:00,2026-03-10T10:00:00+01:00,RCV R1 @ shelf 2,TC-1,shelf 1,temperature,degC,0,141
            P1,BAKE,OVEN,2026-03-10T09:30:00+01:00,2026-03-10T10:00:00+01:00,RCV R1 @ shelf 2,TC-1,shelf 1,temperature,degC,900,141
            P1,BAKE,OVEN,2026-03-10T09:30:00+01:00,2026-03-10T10:00:00+01:00,RCV R1 @ shelf 2,TC-1,shelf 1,temperature,degC,1800,141
            """;

    @LocalServerPort
    int port;

    @Autowired
    Door door;

    @Autowired
    ApplicationContext context;

    @TempDir
    Path files;

    @BeforeEach
    void release() {
        Workshop workshop = Workshop.released(door);
        workshop.plant().say("specification", "2 00:00", RawData.powerRevision("B", "0.5"));
        workshop.plant().say("recipe", "2 00:00", RawData.bakeRevision("B", "20"));
        new KnownPeople(context).add("pe-1", Role.PROCESS);
    }

    @Test
    void sweepsAreTakenInFileByFileAndTheirVerdictIsSeen() throws IOException {
        Path good = written("rig-1.csv", SWEEP);
        Path bad = written("rig-2.csv", "a;b\n1;2\n");
        try (Browser browser = Browser.open(1280, 900).signIn(port, "pe-1")) {
            WebDriver page = browser.go(at("/journal/raw"));
            page.findElement(By.name("files")).sendKeys(good + "\n" + bad);
            page.findElement(By.name("mapping")).sendKeys(MAPPING);
            send(page);
            assertThat(report(page, "rig-1.csv")).contains("1 of 1 runs were taken in", "F1", "accepted");
            assertThat(report(page, "rig-2.csv")).contains("The file has no column", "Its columns are a, b");
            page.findElement(By.linkText("F1")).click();
            appears(page, "figure.chart svg");
            // so few points leave the highest power open
            assertThat(page.findElement(By.cssSelector("h3 .tag")).getText()).isEqualTo("not proven");
            assertThat(page.findElement(By.tagName("main")).getText()).contains("Maximum power");
            assertThat(browser.complaints()).noneMatch(complaint -> complaint.contains("Content Security Policy"));
        }
    }

    @Test
    void profileThatBreaksItsRecipeIsTakenInWithAFindingAndSeenOnItsPage() throws IOException {
        Path profile = written("logger.csv", PROFILE);
        try (Browser browser = Browser.open(800, 900).signIn(port, "pe-1")) {
            WebDriver page = browser.go(at("/journal/raw"));
            page.findElement(By.name("files")).sendKeys(profile.toString());
            new Select(page.findElement(By.name("kind"))).selectByValue("cure-run");
            send(page);
            assertThat(report(page, "logger.csv")).contains("accepted with finding", "broke recipe BAKE");
            page.findElement(By.linkText("P1")).click();
            appears(page, "figure.chart svg");
            assertThat(page.findElement(By.cssSelector("h3 .tag")).getText()).isEqualTo("failed");
            assertThat(page.findElement(By.tagName("main")).getText()).contains("shelf 1", "shelf 2");
        }
    }

    private Path written(String name, String text) throws IOException {
        return Files.writeString(files.resolve(name), text);
    }

    private static void send(WebDriver page) {
        page.findElement(By.cssSelector("form[enctype] button")).click();
        appears(page, "main section[role=status]");
    }

    private static String report(WebDriver page, String file) {
        return page.findElements(By.cssSelector("main section[role=status]")).stream()
                .map(WebElement::getText)
                .filter(text -> text.contains(file))
                .findFirst()
                .orElseThrow();
    }

    private static void appears(WebDriver page, String what) {
        Browser.waiting(page)
                .until(any -> !page.findElements(By.cssSelector(what)).isEmpty());
    }

    private URI at(String address) {
        return URI.create("http://127.0.0.1:" + port + address);
    }
}
