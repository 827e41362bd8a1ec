package dev.sunthread.access;

import static dev.sunthread.testing.KnownPeople.PASSWORD;
import static dev.sunthread.testing.KnownPeople.PIN;
import static dev.sunthread.testing.Visitor.leadsTo;
import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.access.people.Credentials;
import dev.sunthread.access.people.People;
import dev.sunthread.ledger.Door;
import dev.sunthread.testing.KnownPeople;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SignedInAs;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.testing.Visitor;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;

/** Signing in, being refused, and leaving, over HTTP as a browser does. */
@SunthreadTest(webEnvironment = WebEnvironment.RANDOM_PORT)
@SignedInAs({})
class SignInJourneyTests {

    @LocalServerPort
    int port;

    @Autowired
    ApplicationContext context;

    @Autowired
    People people;

    @Autowired
    Credentials credentials;

    @Autowired
    AccessLog log;

    @Autowired
    Door door;

    KnownPeople known;
    Visitor visitor;

    @BeforeEach
    void somebodyCanSignIn() {
        known = new KnownPeople(context);
        known.add("qe-1", Role.QUALITY);
        visitor = new Visitor(port);
    }

    @Test
    void leadsToThePageThatWasAskedForAndBackOut() throws Exception {
        String asked = leadsTo(visitor.open("/lot?number=A%2017"));
        assertThat(asked).endsWith("/sign-in?to=%2Flot%3Fnumber%3DA%252017");
        var signedIn = visitor.send(
                "/sign-in", "/sign-in", Map.of("name", "QE-1", "secret", PASSWORD, "to", "/lot?number=A%2017"));
        assertThat(leadsTo(signedIn)).endsWith("/lot?number=A%2017");
        assertThat(visitor.open("/findings").body()).contains("Person qe-1", "quality engineer");

        assertThat(leadsTo(visitor.send("/", "/sign-out", Map.of()))).endsWith("/sign-in?told=left");
        assertThat(leadsTo(visitor.open("/findings"))).contains("/sign-in");
        assertThat(logged()).containsSubsequence("signed-out", "signed-in");
    }

    @Test
    void leadsToNoOtherSite() throws Exception {
        for (String elsewhere : List.of("//evil.example/", "https://evil.example/", "/\\evil.example")) {
            var answer =
                    visitor.send("/sign-in", "/sign-in", Map.of("name", "qe-1", "secret", PASSWORD, "to", elsewhere));
            assertThat(leadsTo(answer)).doesNotContain("evil");
        }
    }

    @Test
    void saysTheSameOfAnUnknownNameAndAWrongPassword() throws Exception {
        String wrong = leadsTo(visitor.signIn("qe-1", "not the one"));
        assertThat(leadsTo(visitor.signIn("qe-2", PASSWORD))).isEqualTo(wrong).contains("told=wrong");
        assertThat(visitor.open("/sign-in?told=wrong").body()).contains("fit together");
        assertThat(log.latest(0, 9))
                .filteredOn(line -> line.word().equals("sign-in-refused"))
                .extracting(AccessLog.Line::about)
                .containsExactly(null, "qe-1");
    }

    @Test
    void takesNoFormWithoutItsToken() throws Exception {
        visitor.signIn("qe-1", PASSWORD);
        var answer = visitor.sendBare("/findings", Map.of("entry", "e-1", "why", "a long story"));
        assertThat(answer.statusCode()).isEqualTo(403);
        assertThat(answer.body()).contains("was not taken", "a long story");
    }

    @Test
    void endsTheSessionOfWhoIsBlocked() throws Exception {
        visitor.signIn("qe-1", PASSWORD);
        assertThat(visitor.open("/findings").statusCode()).isEqualTo(200);
        people.setBlocked("qe-1", true);
        assertThat(leadsTo(visitor.open("/findings"))).contains("told=ended");
        assertThat(leadsTo(visitor.signIn("qe-1", PASSWORD))).contains("told=wrong");
    }

    @Test
    void givesAndTakesRightsAtOnce() throws Exception {
        visitor.signIn("qe-1", PASSWORD);
        assertThat(visitor.open("/people").statusCode()).isEqualTo(403);
        people.describe(
                new dev.sunthread.access.people.PersonWords("qe-1", "Q", "qe-1", java.util.Set.of(Role.AUDITOR)));
        assertThat(visitor.open("/people").statusCode()).isEqualTo(200);
    }

    @Test
    void letsNobodyDoAnythingBeforeAGivenPasswordIsChanged() throws Exception {
        String given = credentials.oneTimePassword("qe-1");
        visitor.signIn("qe-1", given);
        assertThat(leadsTo(visitor.open("/findings"))).endsWith("/account");
        var changed = visitor.send(
                "/account",
                "/account/password",
                Map.of("old", given, "password", "quite another one", "again", "quite another one"));
        assertThat(leadsTo(changed)).contains("told=changed");
        visitor.signIn("qe-1", "quite another one");
        assertThat(visitor.open("/findings").statusCode()).isEqualTo(200);
    }

    @Test
    void aDeviceOfAStationLeadsToBadgeAndPinAndNotToTheFormOfADesk() throws Exception {
        Plant.released(door);
        known.add("pe-1", Role.PROCESS, Role.OPERATOR);
        visitor.signIn("pe-1", PASSWORD);
        visitor.send("/device", "/device", Map.of("station", "BOND"));
        assertThat(leadsTo(visitor.send("/", "/sign-out", Map.of()))).endsWith("/sign-in?told=left");
        assertThat(leadsTo(visitor.open("/sign-in?told=left"))).endsWith("/badge?told=left");
        assertThat(leadsTo(visitor.open("/sign-in?to=/lot?number%3DA%252017")))
                .endsWith("/badge?to=%2Flot%3Fnumber%3DA%252017");
        assertThat(visitor.open("/badge").body()).contains("value=\"/work\"").doesNotContain("name=\"name\"");
        assertThat(visitor.open("/sign-in?by=password").body()).contains("name=\"name\"");
        assertThat(visitor.open("/sign-in?told=wrong").body()).contains("name=\"name\"");
        // a badge that was scanned there all the same is not shown: it is asked for where it belongs
        Map<String, String> scanned = Map.of("name", "BADGE-pe-1", "secret", "");
        assertThat(leadsTo(visitor.send("/sign-in?by=password", "/sign-in", scanned)))
                .contains("/badge?told=here");
        assertThat(visitor.open("/badge?told=here").body())
                .contains("Scan your badge here")
                .doesNotContain("BADGE-");
    }

    @Test
    void signsInByBadgeOnlyAtADeviceOfAStation() throws Exception {
        Plant.released(door);
        known.add("pe-1", Role.PROCESS, Role.ADMINISTRATOR);
        Map<String, String> badge = Map.of("way", "badge", "name", "BADGE-pe-1", "secret", PIN);
        assertThat(leadsTo(visitor.send("/sign-in", "/sign-in", badge))).contains("/badge?told=wrong");

        visitor.signIn("pe-1", PASSWORD);
        visitor.send("/device", "/device", Map.of("station", "BOND"));
        visitor.send("/", "/sign-out", Map.of());
        assertThat(visitor.send("/badge", "/badge", Map.of("badge", "BADGE-pe-1"))
                        .body())
                .contains("Station BOND", "Type your PIN");
        visitor.send("/badge", "/sign-in", badge);
        assertThat(visitor.open("/").body()).contains("Person pe-1", ", BOND");
        // a PIN is short, so that what can do much harm needs the password
        assertThat(visitor.open("/people").body()).contains("Sign in with your password at a desk");
    }

    @Test
    void sendsHeadersThatLetABrowserLoadNothingElse() throws Exception {
        var headers = visitor.open("/sign-in").headers();
        assertThat(headers.firstValue("Content-Security-Policy").orElseThrow())
                .contains("default-src 'none'", "script-src 'self'", "style-src 'self'", "frame-ancestors 'none'")
                .doesNotContain("unsafe");
        assertThat(headers.firstValue("X-Content-Type-Options")).hasValue("nosniff");
        assertThat(headers.firstValue("Referrer-Policy")).hasValue("same-origin");
        assertThat(headers.allValues("Set-Cookie"))
                .allSatisfy(cookie -> assertThat(cookie).contains("HttpOnly", "SameSite=Lax"));
    }

    @Test
    void showsPagesInTheLanguageOfTheBrowser() throws Exception {
        var german = java.net.http.HttpClient.newHttpClient()
                .send(
                        java.net.http.HttpRequest.newBuilder(
                                        java.net.URI.create("http://127.0.0.1:" + port + "/sign-in"))
                                .header("Accept-Language", "de")
                                .build(),
                        java.net.http.HttpResponse.BodyHandlers.ofString());
        assertThat(german.body()).contains("Anmeldename", "Hier kann sich niemand selbst eintragen");
    }

    private List<String> logged() {
        return log.latest(0, 20).stream().map(AccessLog.Line::word).toList();
    }
}
