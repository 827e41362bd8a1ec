package dev.sunthread.station;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import dev.sunthread.access.Caller;
import dev.sunthread.access.Role;
import dev.sunthread.access.signin.SignedIn;
import dev.sunthread.ledger.Door;
import dev.sunthread.testing.KnownPeople;
import dev.sunthread.testing.SunthreadTest;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.test.context.TestSecurityContextHolder;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;

/** Every rule that something scanned at a station can break is seen refusing on its page, with reason and remedy. */
@SunthreadTest
class RefusalTests {

    private static final Pattern RULE = Pattern.compile("^\\| `([a-z-]+)` \\|", Pattern.MULTILINE);

    @Autowired
    Door door;

    @Autowired
    ApplicationContext context;

    @Autowired
    MockMvc http;

    @Autowired
    JdbcClient jdbc;

    static Stream<Refusal> refusals() {
        return Stream.of(RouteRefusals.all(), MaterialRefusals.all(), UnitRefusals.all())
                .flatMap(all -> all);
    }

    @ParameterizedTest
    @MethodSource("refusals")
    void isSeenOnThePageAndNothingIsRecorded(Refusal refusal) throws Exception {
        new KnownPeople(context).add("op-1", Role.OPERATOR);
        LineFloor floor = LineFloor.released(door);
        refusal.told().accept(floor);
        for (String scan : refusal.scans()) {
            assertThat(scan(refusal.station(), scan)).doesNotContain("Refused");
        }
        refusal.meanwhile().happens(floor, jdbc);
        int before = entries();
        assertThat(scan(refusal.station(), refusal.breaks()))
                .contains("reply refused", "Refused")
                .contains(refusal.says());
        assertThat(entries()).isEqualTo(before);
        String[] english =
                refusal.says().stream().filter(words -> words.contains(" ")).toArray(String[]::new);
        assertThat(english).isNotEmpty();
        assertThat(inGerman())
                .contains("Abgelehnt")
                .doesNotContain("lang=\"en\"")
                .doesNotContain(english);
    }

    /** The page of the one who scanned last, as somebody reads it who reads German alone. */
    private String inGerman() throws Exception {
        return answer(http.perform(get("/work").header("X-Part", "bench").header("Accept-Language", "de")));
    }

    private String scan(String station, String text) throws Exception {
        Caller operator = Caller.person("op-1", "Op", Set.of(Role.OPERATOR), Caller.Means.BADGE, station);
        TestSecurityContextHolder.setAuthentication(new SignedIn(operator));
        return answer(http.perform(post("/work").header("X-Part", "bench").param("text", text)));
    }

    private static String answer(ResultActions done) throws Exception {
        var answer = done.andReturn().getResponse();
        assertThat(answer.getStatus())
                .as(answer.getRedirectedUrl() + answer.getErrorMessage())
                .isEqualTo(200);
        return answer.getContentAsString().replace("&#39;", "'");
    }

    private int entries() {
        return jdbc.sql("SELECT count(*) FROM ledger.entry")
                .query(Integer.class)
                .single();
    }

    @Test
    void isShownOfEveryRuleOrCannotArise() throws Exception {
        Set<String> documented = RULE.matcher(Files.readString(Path.of("src", "docs", "interlocks.md")))
                .results()
                .map(row -> row.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> shown = refusals().map(Refusal::rule).collect(Collectors.toCollection(TreeSet::new));
        Map<String, String> never = NeverAtStations.rules();
        assertThat(shown).doesNotContainAnyElementsOf(never.keySet());
        assertThat(never.values()).noneMatch(String::isBlank);
        shown.addAll(never.keySet());
        assertThat(shown).containsExactlyElementsOf(documented);
    }
}
