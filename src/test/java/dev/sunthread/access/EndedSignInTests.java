package dev.sunthread.access;

import static dev.sunthread.testing.KnownPeople.PASSWORD;
import static dev.sunthread.testing.Visitor.leadsTo;
import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.ledger.Door;
import dev.sunthread.testing.KnownPeople;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SignedInAs;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.testing.Visitor;
import java.net.http.HttpResponse;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

/** A form that is sent after the sign-in ended is not lost and not sent by itself: it stands there again, filled. */
@SunthreadTest(webEnvironment = WebEnvironment.RANDOM_PORT)
@SignedInAs({})
class EndedSignInTests {

    @LocalServerPort
    int port;

    @Autowired
    ApplicationContext context;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    Door door;

    KnownPeople known;
    Visitor visitor;
    Map<String, String> settled;

    @BeforeEach
    void aFindingWaits() throws Exception {
        known = new KnownPeople(context);
        known.add("qe-1", Role.QUALITY);
        known.add("qe-2", Role.QUALITY);
        known.add("au-1", Role.AUDITOR);
        Plant plant = Plant.released(door);
        plant.bondWithLot("08:00", "R7", "A-99");
        settled = Map.of("entry", plant.lastId(), "finding", "1", "id", "settled-1", "why", "<a long story>");
        visitor = new Visitor(port);
        visitor.signIn("qe-1", PASSWORD);
    }

    @Test
    void keepsWhatWasTypedAndComesBackToItsPage() throws Exception {
        HttpResponse<String> sent = sentAfterTheEnd();
        assertThat(leadsTo(sent)).endsWith("/sign-in?to=%2Ffindings%3Fpage%3D1&told=ended");
        HttpResponse<String> back = visitor.send(
                "/sign-in", "/sign-in", Map.of("name", "qe-1", "secret", PASSWORD, "to", "/findings?page=1"));
        assertThat(leadsTo(back)).endsWith("/findings?page=1");
        assertThat(visitor.open("/findings?page=1").body())
                .contains("data-kept=\"/findings\"", "data-typed=\"why\">&lt;a long story&gt;<")
                .doesNotContain("data-typed=\"_csrf\"");
        assertThat(settlements()).isZero();
        assertThat(visitor.open("/findings?page=1").body()).doesNotContain("data-kept");
    }

    @Test
    void keepsItThroughAWrongPassword() throws Exception {
        sentAfterTheEnd();
        visitor.signIn("qe-1", "not the one");
        visitor.signIn("qe-1", PASSWORD);
        assertThat(visitor.open("/findings?page=1").body()).contains("data-kept=\"/findings\"");
    }

    @Test
    void showsItAgainToWhoIsSignedInWithAnotherSession() throws Exception {
        String page = visitor.open("/findings?page=1").body();
        HttpResponse<String> sent = visitor.sendBare("/findings", withToken("old token"), from("/findings?page=1"));
        assertThat(leadsTo(sent)).endsWith("/findings?page=1");
        assertThat(visitor.open("/findings?page=1").body()).contains("data-kept=\"/findings\"");
        assertThat(page).doesNotContain("data-kept");
    }

    @Test
    void showsNobodyWhatSomebodyElseTyped() throws Exception {
        String page = visitor.open("/findings").body();
        assertThat(page).contains("_csrf");
        // who is blocked and let in again has signed in before that
        context.getBean(dev.sunthread.access.people.People.class).setBlocked("qe-1", true);
        HttpResponse<String> sent = visitor.sendOpened(page, "/findings", settled, from("/findings"));
        assertThat(leadsTo(sent)).endsWith("/sign-in?to=%2Ffindings&told=ended");
        visitor.signIn("qe-2", PASSWORD);
        assertThat(visitor.open("/findings").body()).doesNotContain("data-kept", "a long story");
    }

    @Test
    void keepsNothingOfAnotherSite() throws Exception {
        HttpResponse<String> sent =
                visitor.sendBare("/findings", withToken("none"), Map.of("Referer", "http://evil.example/findings"));
        assertThat(sent.statusCode()).isEqualTo(403);
        assertThat(visitor.open("/findings").body()).doesNotContain("data-kept");
    }

    private HttpResponse<String> sentAfterTheEnd() throws Exception {
        String page = visitor.open("/findings?page=1").body();
        jdbc.sql("DELETE FROM access.session").update();
        return visitor.sendOpened(page, "/findings", settled, from("/findings?page=1"));
    }

    private Map<String, String> withToken(String token) {
        Map<String, String> fields = new java.util.HashMap<>(settled);
        fields.put("_csrf", token);
        return fields;
    }

    private Map<String, String> from(String page) {
        return Map.of("Referer", "http://127.0.0.1:" + port + page);
    }

    private long settlements() {
        return jdbc.sql("SELECT count(*) FROM inbox.finding_settlement")
                .query(Long.class)
                .single();
    }
}
