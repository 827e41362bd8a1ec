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
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebDriver;
import org.openqa.selenium.WebElement;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;

/** From a lot to the units it went into and back to their lots, without a mouse. */
@Tag("browser")
@SunthreadTest(webEnvironment = WebEnvironment.RANDOM_PORT)
class JourneyTests {

    private static final int MOST_TABS = 80;

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
    void tracesALotForwardsAndAUnitBackByKeyboardAlone() throws Exception {
        SmallPlant.built(door);
        try (var browser = Browser.open(1280, 900).signIn(port, known)) {
            WebDriver page = browser.go(URI.create("http://127.0.0.1:" + port + "/"));
            type(page, "A-17" + Keys.ENTER);
            browser.shows("h1", "A-17");

            tabTo(page, "Where did it go").sendKeys(Keys.ENTER);
            browser.shows("h1", "Where did lot A-17 go?");

            tabTo(page, "RCV R0001").sendKeys(Keys.ENTER);
            browser.shows("h1", "RCV R0001");

            tabTo(page, "What is in it").sendKeys(Keys.ENTER);
            browser.shows("h1", "What is in RCV R0001?");

            tabTo(page, "A-17").sendKeys(Keys.ENTER);
            browser.shows("h1", "A-17");

            page.findElement(By.tagName("body")).sendKeys("/");
            browser.appears("input:focus");
            type(page, "far/9 1" + Keys.ENTER);
            browser.shows("main", "Did you mean");
            assertThat(page.findElement(By.tagName("main")).getText()).contains("FAR/9 1");
        }
    }

    private static void type(WebDriver page, String keys) {
        page.switchTo().activeElement().sendKeys(keys);
    }

    /** Goes on with the Tab key until the focus is on the link with this text. */
    private static WebElement tabTo(WebDriver page, String text) {
        for (int tabs = 0; tabs < MOST_TABS; tabs++) {
            page.switchTo().activeElement().sendKeys(Keys.TAB);
            WebElement focused = page.switchTo().activeElement();
            if (focused.getTagName().equals("a") && focused.getText().equals(text)) {
                return focused;
            }
        }
        throw new AssertionError("No link \"" + text + "\" within reach of the Tab key on " + page.getTitle());
    }
}
