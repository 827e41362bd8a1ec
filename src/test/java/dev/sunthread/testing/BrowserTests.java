package dev.sunthread.testing;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.access.Role;
import java.net.URI;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;

@Tag("browser")
@SunthreadTest(webEnvironment = WebEnvironment.RANDOM_PORT)
class BrowserTests {

    @LocalServerPort
    int port;

    @TempDir
    Path pictures;

    @Autowired
    ApplicationContext context;

    String known;

    @BeforeEach
    void somebodyCanSignIn() {
        known = new KnownPeople(context).add("qe-1", Role.QUALITY);
    }

    @Test
    void showsWhatTheApplicationAnswers() throws Exception {
        try (var browser = Browser.open(1280, 800).signIn(port, known)) {
            var page = browser.go(URI.create("http://127.0.0.1:" + port + "/"));
            browser.screenshot(pictures.resolve("start.png"));

            assertThat(page.findElement(By.tagName("body")).getText()).isNotBlank();
            assertThat(pictures.resolve("start.png")).isNotEmptyFile();
        }
    }
}
