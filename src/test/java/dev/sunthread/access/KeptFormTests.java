package dev.sunthread.access;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.ledger.Door;
import dev.sunthread.testing.Browser;
import dev.sunthread.testing.KnownPeople;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SignedInAs;
import dev.sunthread.testing.SunthreadTest;
import java.net.URI;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.WebDriver;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

/** In a real browser: what was typed before the sign-in ended stands in its form again after the next, unsent. */
@SunthreadTest(webEnvironment = WebEnvironment.RANDOM_PORT)
@SignedInAs({})
@Tag("browser")
class KeptFormTests {

    @LocalServerPort
    int port;

    @Autowired
    ApplicationContext context;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    Door door;

    @Test
    void standsInTheFormItWasTypedInto() throws Exception {
        Plant plant = Plant.released(door);
        plant.bondWithLot("08:00", "R7", "A-98");
        plant.bondWithLot("08:10", "R8", "A-99");
        String meant = plant.lastId();
        String known = new KnownPeople(context).add("qe-1", Role.QUALITY);
        try (Browser browser = Browser.open(1280, 900).signIn(port, known)) {
            WebDriver page = browser.go(URI.create("http://127.0.0.1:" + port + "/findings"));
            page.findElement(By.xpath("//summary[following-sibling::form[input[@value='" + meant + "']]]"))
                    .click();
            page.findElement(By.cssSelector(formOf(meant) + " input[name=why]")).sendKeys("the receipt was late");
            jdbc.sql("DELETE FROM access.session").update();
            page.findElement(By.cssSelector(formOf(meant) + " button")).click();
            browser.appears("input[name=secret]");
            page.findElement(By.name("name")).sendKeys("qe-1");
            page.findElement(By.name("secret")).sendKeys(KnownPeople.PASSWORD);
            page.findElement(By.cssSelector("main form button")).click();
            browser.appears("[data-kept]");
            assertThat(page.findElement(By.cssSelector(formOf(meant) + " input[name=why]"))
                            .getDomProperty("value"))
                    .isEqualTo("the receipt was late");
            assertThat(page.findElement(By.cssSelector(formOf(meant) + " input[name=why]"))
                            .isDisplayed())
                    .isTrue();
            assertThat(jdbc.sql("SELECT count(*) FROM inbox.finding_settlement")
                            .query(Long.class)
                            .single())
                    .isZero();
        }
    }

    private static String formOf(String entry) {
        return "form:has(input[name=entry][value='" + entry + "']):has(input[name=finding][value='1'])";
    }
}
