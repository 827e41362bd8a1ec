package dev.sunthread.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import com.jayway.jsonpath.JsonPath;
import dev.sunthread.ledger.Door;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import java.net.URI;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.web.util.HtmlUtils;

/**
 * Answers joined: R0001 surely has both lots, R0002 surely A-17, R0003 surely A-18, and R0004 surely A-17 and possibly
 *
 */
@SunthreadTest
class JoinedAnswersTests {

    private static final String LOTS = of("[{\"lot\":\"A-17\"},{\"lot\":\"A-18\"}]");
    private static final String BOTH =
            "{\"of\":\"all\",\"scopes\":[{\"of\":\"lot\",\"lot\":\"A-17\"},{\"of\":\"lot\",\"lot\":\"A-18\"}]}";
    private static final String WITHOUT =
            "{\"of\":\"except\",\"scope\":{\"of\":\"lot\",\"lot\":\"A-17\"},\"without\":{\"of\":\"lot\",\"lot\":\"A-18\"}}";

    @Autowired
    Door door;

    @Autowired
    MockMvc pages;

    Plant plant;

    @BeforeEach
    void worked() {
        plant = Plant.released(door);
        plant.receipt("07:00", "A-17", "ADH", "FAR/9 1");
        plant.receipt("07:00", "A-18", "ADH", "FAR/9 2");
        plant.birth("08:10", "RCV", "R0001", "R0002", "R0003", "R0004");
        plant.charge("08:00", "A-17", "V1");
        plant.charge("08:00", "A-18", "V2");
        plant.bondAt("08:20", "R0001", "V1", "A-17");
        plant.bondAt("08:30", "R0001", "V2", "A-18");
        plant.bondAt("08:21", "R0002", "V1", "A-17");
        plant.bondAt("08:22", "R0003", "V2", "A-18");
        // not cleaned between: the earlier lot may be carried over
        plant.charge("09:00", "A-17", "V2");
        plant.bondAt("09:30", "R0004", "V2", "A-17");
    }

    @Test
    void aThingInAllAnswersHasTheWeakestOfItsClasses() throws Exception {
        String json = body("/api/v1/traces/joined?" + LOTS);
        assertThat(JsonPath.<List<String>>read(json, "$.lines[?(@.certainty == 'certain')].name"))
                .containsExactly("R0001");
        assertThat(JsonPath.<List<String>>read(json, "$.lines[?(@.certainty != 'certain')].name"))
                .containsExactly("R0004");
        assertThat(JsonPath.<List<String>>read(json, "$.lines[?(@.name == 'R0004')].sides[*].certainty"))
                .containsExactly("certain", "possible");
    }

    @Test
    void whatIsPossibleInTheOtherIsToldApartFromWhatIsInOneOnly() throws Exception {
        assertThat(names(LOTS + "&join=only")).containsExactly("R0002");
        assertThat(names(LOTS + "&join=open")).containsExactly("R0004");
        assertThat(names(of("[{\"lot\":\"A-18\"},{\"lot\":\"A-17\"}]") + "&join=only"))
                .containsExactly("R0003");
        assertThat(names(of("[{\"lot\":\"A-18\"},{\"lot\":\"A-17\"}]") + "&join=open"))
                .isEmpty();
    }

    /** Else a unit that one question names itself would be told as surely not in its answer. */
    @Test
    void whatAQuestionNamesItselfIsInItsAnswer() throws Exception {
        String named = of(
                "[{\"lot\":\"A-17\"},{\"scope\":{\"of\":\"units\",\"units\":[{\"item\":\"RCV\",\"serial\":\"R0002\"}]}}]");
        assertThat(names(named)).containsExactly("R0002");
        assertThat(names(named + "&join=only")).containsExactly("R0001", "R0004");
    }

    @Test
    void joinsAnswersOfOneCutOffOnAPageInFilesAndForPrograms() throws Exception {
        Integer cutoff = JsonPath.read(body("/api/v1/traces/joined?" + LOTS), "$.cutoff");
        String page = text("/compare/joined?" + LOTS);
        assertThat(page).contains("In all", "R0001", "R0004", "Lot A-17 was scanned as used", "where did A-18 go");
        assertThat(body("/compare/joined?" + LOTS)).contains("cutoff=" + cutoff).doesNotContain("Ask again");
        plant.birth("11:00", "RCV", "R0005");
        plant.bondAt("11:01", "R0005", "V1", "A-17");
        assertThat(names(LOTS + "&join=only&cutoff=" + cutoff)).containsExactly("R0002");
        assertThat(names(LOTS + "&join=only")).containsExactly("R0002", "R0005");
        assertThat(text("/compare/joined?" + LOTS + "&cutoff=" + cutoff)).contains("2 records were made since");
        assertThat(body("/compare/joined?" + LOTS + "&join=open&format=csv"))
                .contains("receiver,RCV,R0004,plant,certain,", ",certain,", ",possible,");
    }

    @Test
    void joinsWhatIsInTwoUnits() throws Exception {
        String units = of("[{\"way\":\"backward\",\"item\":\"RCV\",\"serial\":\"R0001\"},"
                + "{\"way\":\"backward\",\"item\":\"RCV\",\"serial\":\"R0002\"}]");
        assertThat(names(units)).containsExactly("A-17");
        assertThat(names(units + "&join=only")).containsExactly("A-18");
    }

    @Test
    void offersItWhereAllIsEmpty() throws Exception {
        String page = body("/trace?scope=" + encoded(BOTH));
        assertThat(page).contains("No suspect falls under every part of all", "in the answer of every part instead");
        assertThat(follow(page, "/compare/joined[?]"))
                .contains("R0001", "R0004")
                .doesNotContain("R0002");
        MockHttpServletResponse json = answered("/api/v1/traces?scope=" + encoded(BOTH));
        assertThat(json.getStatus()).isEqualTo(409);
        assertThat(JsonPath.<String>read(json.getContentAsString(), "$.remedy")).contains("/api/v1/traces/joined");
    }

    @Test
    void saysWhereExceptTakesNothing() throws Exception {
        String page = body("/trace?scope=" + encoded(WITHOUT));
        assertThat(page).contains("Except takes nothing away");
        assertThat(follow(page, "/compare/joined[?]")).contains("R0002").doesNotContain("R0003");
        String json = body("/api/v1/traces?scope=" + encoded(WITHOUT));
        assertThat(JsonPath.<List<String>>read(json, "$.notes"))
                .singleElement()
                .asString()
                .startsWith("Except takes nothing");
        String instead = JsonPath.read(json, "$.instead");
        assertThat(JsonPath.<List<String>>read(body(instead), "$.lines[*].name"))
                .containsExactly("R0002");
        assertThat(JsonPath.<List<String>>read(body("/api/v1/traces?lot=A-17"), "$.notes"))
                .isEmpty();
    }

    @Test
    void growsFromKeptAnswersAndFromWhatIsTyped() throws Exception {
        String left = JsonPath.read(body("/api/v1/traces?lot=A-17"), "$.id");
        String right = JsonPath.read(body("/api/v1/traces?lot=A-18"), "$.id");
        String joined = answered("/compare/joined?left=" + left + "&right=" + right + "&join=only")
                .getRedirectedUrl();
        assertThat(text(String.valueOf(joined)))
                .contains("R0002", "put B first")
                .doesNotContain("RCV R0001");
        String first = String.valueOf(answered("/compare/joined?lot=A-17").getRedirectedUrl());
        assertThat(text(first)).contains("names 1 questions", "So far:");
        String second = String.valueOf(answered(first + "&lot=A-18").getRedirectedUrl());
        assertThat(text(second)).contains("RCV R0001").doesNotContain("RCV R0002");
    }

    @Test
    void saysWhatIsWrongWithQuestions() throws Exception {
        assertThat(text("/compare/joined?of=nonsense")).contains("can&#39;t be read");
        assertThat(text("/compare/joined?" + of("[{\"lot\":\"A-17\"},{\"lot\":\"NOPE\"}]")))
                .contains("Lot NOPE is not recorded");
        assertThat(answered("/api/v1/traces/joined?of=%5B%7B%7D%5D").getStatus())
                .isEqualTo(422);
        assertThat(answered("/api/v1/traces/joined").getStatus()).isEqualTo(422);
    }

    private List<String> names(String question) throws Exception {
        return JsonPath.read(body("/api/v1/traces/joined?" + question), "$.lines[*].name");
    }

    private String follow(String page, String begin) throws Exception {
        var link = java.util.regex.Pattern.compile("href=\"(" + begin + "[^\"]*join=[^\"]*)\"")
                .matcher(page);
        assertThat(link.find()).isTrue();
        return text(HtmlUtils.htmlUnescape(link.group(1)));
    }

    private static String of(String questions) {
        return "of=" + encoded(questions);
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private MockHttpServletResponse answered(String address) throws Exception {
        return pages.perform(get(URI.create(address))).andReturn().getResponse();
    }

    private String body(String address) throws Exception {
        return answered(address).getContentAsString(StandardCharsets.UTF_8);
    }

    private String text(String address) throws Exception {
        String page = body(address);
        return page.substring(page.indexOf("<main"), page.indexOf("</main>"))
                .replaceAll("<[^>]*>", " ")
                .replaceAll("\\s+", " ");
    }
}
