package dev.sunthread.web;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.access.Role;
import dev.sunthread.ledger.Door;
import dev.sunthread.testing.Browser;
import dev.sunthread.testing.KnownPeople;
import dev.sunthread.testing.SunthreadTest;
import java.net.URI;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.WebDriver;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;

/** The picture of a trace in a real browser, and the keys that need no mouse. */
@Tag("browser")
@SunthreadTest(webEnvironment = WebEnvironment.RANDOM_PORT)
class FlowJourneyTests {

    @LocalServerPort
    int port;

    @Autowired
    Door door;

    @Autowired
    ApplicationContext context;

    String known;

    @BeforeEach
    void somebodyCanSignIn() {
        known = new KnownPeople(context).add("qe-1", Role.QUALITY);
    }

    @Test
    void drawsTheFlowAndLeadsFromABlockToItsUnits() throws Exception {
        SmallPlant.built(door);
        try (var browser = Browser.open(1280, 900).signIn(port, known)) {
            WebDriver page = browser.go(at("/trace/flow?way=forward&lot=A-17"));
            var wait = Browser.waiting(page);
            wait.until(any -> !page.findElements(By.cssSelector("[data-drawn=true] svg path"))
                    .isEmpty());
            assertThat(page.findElement(By.className("flow")).getAttribute("textContent"))
                    .contains("■ receiver", "certain: 2", "shipped to Sunny Field: 1");
            // the strict content policy refuses nothing that the picture needs
            assertThat(browser.complaints()).isEmpty();
            var label = page.findElements(By.cssSelector(".flow text")).stream()
                    .filter(text -> text.getText().contains("■ receiver"))
                    .findFirst()
                    .orElseThrow();
            label.click();
            wait.until(any -> String.valueOf(page.getCurrentUrl()).contains("level=receiver&certainty=certain"));
            browser.shows(".lines", "RCV R0001");
        }
    }

    @Test
    void goesByKeysAndListsThem() throws Exception {
        try (var browser = Browser.open(1280, 900).signIn(port, known)) {
            WebDriver page = browser.go(at("/journal"));
            var wait = Browser.waiting(page);
            press(page, "?");
            wait.until(any -> page.findElement(By.id("keys")).isDisplayed());
            page.findElement(By.cssSelector("#keys button")).click();
            press(page, "gf");
            wait.until(any -> String.valueOf(page.getCurrentUrl()).endsWith("/findings"));
            press(page, "gi");
            wait.until(any -> String.valueOf(page.getCurrentUrl()).endsWith("/inbox"));
            press(page, "gh");
            wait.until(any -> String.valueOf(page.getCurrentUrl()).endsWith(":" + port + "/"));
        }
    }

    private static void press(WebDriver page, String keys) {
        page.findElement(By.tagName("body")).sendKeys(keys);
    }

    private URI at(String address) {
        return URI.create("http://127.0.0.1:" + port + address);
    }
}
