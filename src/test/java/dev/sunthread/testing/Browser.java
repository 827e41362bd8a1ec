package dev.sunthread.testing;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebDriver;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.support.ui.FluentWait;
import org.openqa.selenium.support.ui.Select;
import org.openqa.selenium.support.ui.WebDriverWait;
import org.springframework.util.FileSystemUtils;

/** A real browser without a window, with a profile of its own that is gone after close. */
public final class Browser implements AutoCloseable {

    private static final Path PROGRAM = Path.of("/usr/bin/chromium");
    private static final Path DRIVER = Path.of("/usr/bin/chromedriver");
    private static final Duration LONGEST_PAGE_LOAD = Duration.ofSeconds(30);

    private final Path profile;
    private final ChromeDriver driver;

    private Browser(Path profile, ChromeDriver driver) {
        this.profile = profile;
        this.driver = driver;
    }

    /** Opens a browser whose window has the given size in pixels. */
    public static Browser open(int width, int height) throws IOException {
        Path profile = Files.createTempDirectory("browser");
        var service = new ChromeDriverService.Builder()
                .usingDriverExecutable(DRIVER.toFile())
                .build();
        var driver = new ChromeDriver(service, options(profile, width, height));
        driver.manage().timeouts().pageLoadTimeout(LONGEST_PAGE_LOAD);
        return new Browser(profile, driver);
    }

    private static ChromeOptions options(Path profile, int width, int height) {
        var options = new ChromeOptions();
        var logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, java.util.logging.Level.ALL);
        options.setCapability("goog:loggingPrefs", logs);
        options.setBinary(PROGRAM.toFile());
        options.addArguments(List.of(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-dev-shm-usage",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--lang=en",
                "--accept-lang=en",
                "--user-data-dir=" + profile,
                "--window-size=" + width + "," + height));
        return options;
    }

    /** Signs in as a person of {@link KnownPeople}; the port is that of the application. */
    public Browser signIn(int port, String name) {
        driver.get("http://127.0.0.1:" + port + "/sign-in?by=password");
        driver.findElement(By.name("name")).sendKeys(name);
        driver.findElement(By.name("secret")).sendKeys(KnownPeople.PASSWORD + Keys.ENTER);
        waiting(driver)
                .until(any ->
                        !driver.findElements(By.cssSelector(".signed-in form")).isEmpty());
        return this;
    }

    /** Makes it a device of a station, then signs in there by badge and PIN; both are persons of {@link KnownPeople}. */
    public Browser signInAt(int port, String station, String chooser, String worker) {
        signIn(port, chooser);
        driver.get("http://127.0.0.1:" + port + "/device");
        new Select(driver.findElement(By.name("station"))).selectByValue(station);
        driver.findElement(By.name("station")).submit();
        appears(".notice[role=status]");
        driver.findElement(By.cssSelector(".signed-in form button")).click();
        appears(".signed-in > a");
        driver.get("http://127.0.0.1:" + port + "/badge?to=/work");
        appears("[name=badge]:focus");
        driver.switchTo().activeElement().sendKeys("BADGE-" + worker + Keys.ENTER);
        appears("[name=secret]:focus");
        driver.switchTo().activeElement().sendKeys(KnownPeople.PIN + Keys.ENTER);
        appears("#text:focus");
        return this;
    }

    /** What waits, with patience for pages that change while they are looked at. */
    public static FluentWait<WebDriver> waiting(WebDriver page) {
        return new WebDriverWait(page, LONGEST_PAGE_LOAD).ignoring(StaleElementReferenceException.class);
    }

    /** Waits for something; a page that is asked for too soon would take back what the one before was sending. */
    public void appears(String what) {
        waiting(driver)
                .withMessage(() ->
                        what + " on " + driver.findElement(By.tagName("body")).getText())
                .until(any -> !driver.findElements(By.cssSelector(what)).isEmpty());
    }

    /** Waits until a page is loaded whole on which the first of these shows a text. */
    public void shows(String what, String text) {
        waiting(driver)
                .withMessage(() -> text + " in " + what + " on "
                        + driver.findElement(By.tagName("body")).getText())
                .until(any -> "complete".equals(driver.executeScript("return document.readyState"))
                        && driver.findElements(By.cssSelector(what)).stream()
                                .limit(1)
                                .anyMatch(shown -> shown.getText().contains(text)));
    }

    /** What the browser complained of since it was asked last, such as a script that the content policy refused. */
    public List<String> complaints() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .map(LogEntry::getMessage)
                .toList();
    }

    /** Shows pages from now on as to one who prefers this scheme of colours, {@code light} or {@code dark}. */
    public Browser preferring(String scheme) {
        driver.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
        return this;
    }

    /** Opens a page and returns once it is loaded. */
    public WebDriver go(URI page) {
        driver.get(page.toString());
        return driver;
    }

    /** The page as it stands, for anything this class has no word for. */
    public WebDriver page() {
        return driver;
    }

    /** Writes what the window shows to a PNG file, whose directories are made. */
    public void screenshot(Path file) throws IOException {
        Files.createDirectories(file.toAbsolutePath().getParent());
        Files.write(file, driver.getScreenshotAs(OutputType.BYTES));
    }

    @Override
    public void close() throws IOException {
        driver.quit();
        FileSystemUtils.deleteRecursively(profile);
    }
}
