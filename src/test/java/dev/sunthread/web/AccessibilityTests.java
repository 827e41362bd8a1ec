package dev.sunthread.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.results.Rule;
import com.deque.html.axecore.selenium.AxeBuilder;
import dev.sunthread.access.Role;
import dev.sunthread.ledger.Door;
import dev.sunthread.testing.Browser;
import dev.sunthread.testing.KnownPeople;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebDriver;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;

/** Every kind of page under the rules of WCAG 2.2, A and AA, as axe-core checks them. */
@Tag("browser")
@SunthreadTest(webEnvironment = WebEnvironment.RANDOM_PORT)
class AccessibilityTests {

    /** Of WCAG 2.2: 2.5.3 label in name, 2.5.8 target size, 4.1.2 nothing nested, 2.1.1 what scrolls is reached by keys. */
    private static final List<String> RULES =
            List.of("label-content-name-mismatch", "target-size", "nested-interactive", "scrollable-region-focusable");

    private static final Set<String> GRAVE = Set.of("serious", "critical");

    @LocalServerPort
    int port;

    @Autowired
    Door door;

    @Autowired
    ApplicationContext context;

    @ParameterizedTest
    @CsvSource({"1280, light", "800, dark"})
    void noPageShutsAnyoneOut(int width, String scheme) throws Exception {
        SmallPlant.withRuns(StockedPlant.built(door)).bondWithLot("12:00", "R0002", "A-99");
        List<String> found = new ArrayList<>();
        String known = new KnownPeople(context).add("qe-1", Role.values());
        try (var browser = Browser.open(width, 900).preferring(scheme).signIn(port, known)) {
            for (String address : EveryPage.OF_THE_SMALL_PLANT) {
                WebDriver page = browser.go(URI.create("http://127.0.0.1:" + port + address));
                assertThat(page.findElements(By.tagName("main"))).as(address).hasSize(1);
                Browser.waiting(page)
                        .until(any -> page.findElements(By.cssSelector("[data-flow]:not([data-drawn])"))
                                .isEmpty());
                found.addAll(barriers(address, page));
            }
        }
        assertThat(found).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"1280, dark", "800, light"})
    void theStationsPageShutsNobodyOut(int width, String scheme) throws Exception {
        Plant plant = SmallPlant.built(door);
        String known = new KnownPeople(context).add("qe-1", Role.values());
        try (var browser = Browser.open(width, 600).preferring(scheme).signInAt(port, "BOND", known, known)) {
            WebDriver page = browser.page();
            page.switchTo().activeElement().sendKeys("V1" + Keys.ENTER);
            browser.appears(".reply");
            assertThat(barriers("a position at /work", page)).isEmpty();
            plant.say("hold", "12:30", Map.of("lots", List.of("A-17"), "reason", "Supplier's notice"));
            browser.appears(".stop");
            assertThat(barriers("a stop at /work", page)).isEmpty();
        }
    }

    /** Deep assemblies, many findings and wide tables on a narrow page, under rules of which some are not asked by tag. */
    @ParameterizedTest
    @CsvSource({"1280", "360"})
    void nothingIsTooSmallNestedOrOutOfReach(int width) throws Exception {
        Plant plant = SmallPlant.withRuns(StockedPlant.built(door));
        plant.birth("12:00", "MOD", "M1");
        plant.birth("12:00", "PANEL", "P1");
        plant.birth("12:00", "WALL", "W2");
        plant.install("12:01", "RCV R0002", "WALL W2", "1");
        plant.install("12:02", "WALL W2", "MOD M1", "1");
        plant.install("12:03", "MOD M1", "PANEL P1", "1");
        for (int i = 1; i <= 4; i++) {
            // each with several findings about several things
            plant.say(
                    "shipment",
                    "13:0" + i,
                    Map.of(
                            "shipment",
                            "S-" + i,
                            "consignee",
                            "Sunny Field",
                            "units",
                            List.of(Plant.unit("RCV X" + i), Plant.unit("RCV Y" + i), Plant.unit("RCV R0001"))));
        }
        List<String> found = new ArrayList<>();
        String known = new KnownPeople(context).add("qe-1", Role.values());
        List<String> addresses = new ArrayList<>(EveryPage.OF_THE_SMALL_PLANT);
        addresses.addAll(List.of("/unit?item=PANEL&serial=P1", "/unit?item=PANEL&serial=P1&built=ever"));
        try (var browser = Browser.open(width, 900).signIn(port, known)) {
            for (String address : addresses) {
                WebDriver page = browser.go(URI.create("http://127.0.0.1:" + port + address));
                found.addAll(words(address, new AxeBuilder().withRules(RULES), page));
            }
        }
        assertThat(found).isEmpty();
    }

    private static List<String> words(String address, AxeBuilder axe, WebDriver page) {
        return axe.analyze(page).getViolations().stream()
                .map(rule -> address + " " + words(rule))
                .toList();
    }

    private static List<String> barriers(String address, WebDriver page) {
        return new AxeBuilder()
                        .withTags(List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"))
                        .analyze(page)
                        .getViolations()
                        .stream()
                        .filter(rule -> GRAVE.contains(rule.getImpact()))
                        .map(rule -> address + " " + words(rule))
                        .toList();
    }

    private static String words(Rule rule) {
        return rule.getId() + ": " + rule.getHelp() + " "
                + rule.getNodes().stream()
                        .map(node -> node.getHtml())
                        .distinct()
                        .limit(3)
                        .toList();
    }
}
