package dev.sunthread.station;

import com.deque.html.axecore.selenium.AxeBuilder;
import dev.sunthread.access.Role;
import dev.sunthread.testing.Browser;
import dev.sunthread.testing.KnownPeople;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import java.util.List;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebDriver;
import org.springframework.context.ApplicationContext;

/** A tablet at a station, at which people sign in by badge; keys go wherever the focus is, as a scanner's do. */
final class StationDevice implements AutoCloseable {

    private final Browser browser;
    private final WebDriver page;
    private final int port;

    private StationDevice(Browser browser, int port) {
        this.browser = browser;
        this.page = browser.page();
        this.port = port;
    }

    /** Adds who sets devices up and the operator {@code op-1}, with whom every device begins. */
    static KnownPeople people(ApplicationContext context) {
        KnownPeople people = new KnownPeople(context);
        people.add("pe-1", Role.PROCESS);
        people.add("op-1", Role.OPERATOR);
        return people;
    }

    static StationDevice at(int port, String station) throws IOException {
        return at(port, station, "op-1");
    }

    static StationDevice at(int port, String station, String person) throws IOException {
        StationDevice device = new StationDevice(Browser.open(800, 600), port);
        device.browser.signInAt(port, station, "pe-1", person);
        return device;
    }

    /** Carries the device to another station. */
    StationDevice moveTo(String station) {
        signOut();
        browser.signInAt(port, station, "pe-1", "op-1");
        return this;
    }

    private void signOut() {
        page.findElement(By.cssSelector(".signed-in form button")).click();
        appears(".signed-in > a");
    }

    void appears(String what) {
        browser.appears(what);
    }

    StationDevice type(String text) {
        page.switchTo().activeElement().sendKeys(text + Keys.ENTER);
        return this;
    }

    /** Scans and waits until the page says so. */
    StationDevice scan(String text, String verdict) {
        return type(text).says(verdict);
    }

    StationDevice says(String verdict) {
        Browser.waiting(page)
                .withMessage(() -> verdict + " on " + text())
                .until(any -> page.findElements(By.className("reply")).stream()
                        .anyMatch(shown -> shown.getText().contains(verdict)));
        return this;
    }

    String text() {
        return page.findElement(By.tagName("body")).getText();
    }

    URI address(String address) {
        return URI.create("http://127.0.0.1:" + port + address);
    }

    WebDriver page() {
        return page;
    }

    Browser browser() {
        return browser;
    }

    /** What shuts people out of the page as it stands, by the rules of WCAG 2.2, A and AA, as axe-core checks them. */
    List<String> barriers() {
        return new AxeBuilder()
                        .withTags(List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"))
                        .analyze(page)
                        .getViolations()
                        .stream()
                        .map(rule -> rule.getId() + ": " + rule.getHelp())
                        .toList();
    }

    /** Keeps pictures of the page, small and wide, if {@code -Dsunthread.pictures} names a directory for them. */
    StationDevice picture(String name) throws IOException {
        String directory = System.getProperty("sunthread.pictures");
        if (directory != null) {
            browser.screenshot(Path.of(directory, name + ".png"));
            page.manage().window().setSize(new Dimension(1280, 800));
            browser.screenshot(Path.of(directory, name + "-wide.png"));
            page.manage().window().setSize(new Dimension(800, 600));
        }
        return this;
    }

    @Override
    public void close() throws IOException {
        browser.close();
    }
}
