package dev.sunthread.station;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.selenium.AxeBuilder;
import dev.sunthread.access.Role;
import dev.sunthread.ledger.Door;
import dev.sunthread.testing.Browser;
import dev.sunthread.testing.KnownPeople;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.testing.Wire;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.JavascriptExecutor;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebDriver;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The page at a station opens while the server can't be reached, takes scans, and sends them when it is back. */
@Tag("browser")
@SunthreadTest(webEnvironment = WebEnvironment.RANDOM_PORT)
class StationShellTests {

    /** What the browser keeps, as lines of addresses. */
    private static final String KEPT = """
            const done = arguments[arguments.length - 1];
            (async () => {
              const found = [];
              for (const name of await caches.keys())
                for (const asked of await (await caches.open(name)).keys())
                  found.push(new URL(asked.url).pathname + " " + await (await caches.match(asked)).text());
              done(found.join("\\n"));
            })();
            """;

    @LocalServerPort
    int port;

    @Autowired
    Door door;

    @Autowired
    ApplicationContext context;

    @Autowired
    JdbcClient jdbc;

    @BeforeEach
    void release() {
        ShopFloor.released(door);
        KnownPeople people = new KnownPeople(context);
        people.add("pe-1", Role.PROCESS);
        people.add("op-1", Role.OPERATOR);
        people.add("op-2", Role.OPERATOR);
    }

    private static void until(WebDriver page, BooleanSupplier what) {
        Browser.waiting(page)
                .withMessage(() -> page.findElement(By.tagName("body")).getText())
                .until(any -> what.getAsBoolean());
    }

    private static void appears(WebDriver page, String what) {
        until(page, () -> !page.findElements(By.cssSelector(what)).isEmpty());
    }

    private static void type(WebDriver page, String text) {
        page.switchTo().activeElement().sendKeys(text + Keys.ENTER);
    }

    private static WebDriver atStation(Browser browser, Wire wire) {
        return browser.signInAt(wire.port(), "GLUE", "pe-1", "op-1").page();
    }

    private static String kept(WebDriver page) {
        return String.valueOf(((JavascriptExecutor) page).executeAsyncScript(KEPT));
    }

    /** WCAG 2.2 A and AA, as far as axe can tell. */
    private static void shutsNobodyOut(WebDriver page) {
        assertThat(new AxeBuilder()
                        .withTags(List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"))
                        .analyze(page)
                        .getViolations())
                .isEmpty();
    }

    private int count(String sql) {
        return jdbc.sql(sql).query(Integer.class).single();
    }

    @Test
    void opensWithoutTheServerKeepsScansAndSendsThemWhenItIsBack() throws Exception {
        try (Wire wire = new Wire(port);
                Browser browser = Browser.open(800, 600)) {
            WebDriver page = atStation(browser, wire);
            until(page, () -> kept(page).contains("/station.js"));
            assertThat(kept(page).lines().map(line -> line.split(" ")[0]).filter(line -> line.startsWith("/")))
                    .contains("/work/shell", "/sunthread.css", "/favicon.svg");
            assertThat(kept(page)).doesNotContain("op-1", "Person", "GLUE", "name=\"_csrf");
            wire.cut();
            page.navigate().refresh();
            appears(page, "[data-shell]");
            assertThat(page.findElement(By.id("station")).getText()).isEqualTo("GLUE");
            assertThat(page.findElement(By.id("bench")).getText()).contains("badge that is signed in then");
            type(page, "A-1");
            type(page, "V1");
            until(page, () -> page.findElement(By.id("kept-count")).getText().equals("2"));
            page.navigate().refresh();
            until(page, () -> page.findElement(By.id("kept-count")).getText().equals("2"));
            shutsNobodyOut(page);
            wire.mend();
            until(page, () -> count("SELECT count(*) FROM station.scan WHERE was_kept AND person = 'op-1'") == 2);
            appears(page, ".reply");
            assertThat(count("SELECT count(*) FROM materials.charge")).isEqualTo(1);
            assertThat(browser.complaints()).noneMatch(complaint -> complaint.contains("Content Security Policy"));
        }
    }

    @Test
    void twoPersonsTypeALabelByKeysAlone() throws Exception {
        try (Wire wire = new Wire(port);
                Browser browser = Browser.open(800, 600)) {
            WebDriver page = atStation(browser, wire);
            type(page, ".damaged");
            appears(page, "#said:focus");
            type(page, "R0001");
            until(page, () -> String.valueOf(page.getPageSource()).contains("Another person"));
            type(page, "BADGE-op-2");
            until(page, () -> String.valueOf(page.getPageSource()).contains("Type your PIN"));
            type(page, KnownPeople.PIN);
            until(page, () -> String.valueOf(page.getPageSource()).contains("Type what the label says"));
            type(page, "R0001");
            appears(page, ".reply.accepted");
            shutsNobodyOut(page);
            page.switchTo().activeElement().sendKeys(Keys.ENTER);
            appears(page, "#text:focus");
            until(page, () -> String.valueOf(page.getPageSource()).contains("R0001 is in hand"));
            assertThat(count("SELECT count(*) FROM station.scan WHERE id LIKE 'typed-%.scan'"))
                    .isEqualTo(1);
        }
    }
}
