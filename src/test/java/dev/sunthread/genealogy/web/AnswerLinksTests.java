package dev.sunthread.genealogy.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import com.jayway.jsonpath.JsonPath;
import dev.sunthread.ledger.Door;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.web.SmallPlant;
import java.net.URI;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.web.util.HtmlUtils;

/** Whatever a page of an answer leads to belongs to that answer, whatever was recorded since. */
@SunthreadTest
class AnswerLinksTests {

    private static final Pattern OF_THE_ANSWER = Pattern.compile(
            "(?:href|data-flow|value)=\"(/(?:trace|trace/flow|api/v1/traces|api/v1/traces/flow)[?][^\"]*)");
    private static final Pattern NEXT = Pattern.compile("rel=\"next\" href=\"([^\"#]*)");
    private static final Pattern HASH = Pattern.compile("class=\"hash\" title=\"([0-9a-f]+)");

    @Autowired
    Door door;

    @Autowired
    MockMvc pages;

    Plant plant;

    @BeforeEach
    void built() {
        plant = SmallPlant.built(door);
    }

    @Test
    void everyLinkOfAnAnswerCarriesItsCutOff() throws Exception {
        long cutoff = cutoff();
        for (String address : List.of("/trace?way=forward&lot=A-17&level=receiver", "/trace/flow?lot=A-17")) {
            String page = text(address);
            assertThat(links(page)).hasSizeGreaterThan(5).allMatch(link -> link.contains("cutoff=" + cutoff));
        }
        assertThat(text("/trace?lot=A-17")).contains("name=\"cutoff\" value=\"" + cutoff + "\"");
        List<String> drawn = JsonPath.read(text("/api/v1/traces/flow?lot=A-17"), "$..address");
        assertThat(drawn).isNotEmpty().allMatch(link -> link.contains("cutoff=" + cutoff));
    }

    @Test
    void theNextPageBelongsToTheSameAnswer() throws Exception {
        for (int i = 0; i < 60; i++) {
            plant.birth("11:30", "RCV", "N" + i);
            plant.bondWithLot("11:31", "N" + i, "A-17");
        }
        String first = text("/trace?lot=A-17");
        assertThat(first).doesNotContain("Ask again");
        String next = found(NEXT, first);
        String nextOfFile = JsonPath.read(text("/api/v1/traces?lot=A-17"), "$.next");
        plant.bondWithLot("11:40", "R0003", "A-17");
        assertThat(found(HASH, text(next))).isEqualTo(found(HASH, first));
        String second = text(next);
        assertThat(second).contains("1 record was made since this answer").contains("href=\"/trace?lot=A-17#lines\"");
        assertThat(JsonPath.<String>read(text(nextOfFile), "$.hash")).isEqualTo(found(HASH, first));
        assertThat(found(HASH, text("/trace?lot=A-17"))).isNotEqualTo(found(HASH, first));
        assertThat(text(next + "&format=csv")).doesNotContain("R0003");
    }

    @Test
    void aFileOfAnAnswerThatChangedIsExplainedOnAPage() throws Exception {
        MockHttpServletResponse old = pages.perform(get(URI.create("/trace?lot=A-17&table=trace-0a1b2c3d&format=csv")))
                .andReturn()
                .getResponse();
        assertThat(old.getStatus()).isEqualTo(404);
        assertThat(old.getContentType()).startsWith("text/html");
        assertThat(old.getContentAsString())
                .contains("There is no list “trace-0a1b2c3d” here")
                .contains("href=\"/trace?lot=A-17\"");
    }

    @Test
    void filesNeedNoHashInTheirLinks() throws Exception {
        String file = links(text("/trace?lot=A-17")).stream()
                .filter(link -> link.contains("format=xlsx"))
                .findFirst()
                .orElseThrow();
        assertThat(file).doesNotContain("table=");
    }

    private long cutoff() throws Exception {
        return JsonPath.<Integer>read(text("/api/v1/traces?lot=A-17"), "$.cutoff");
    }

    private static List<String> links(String page) {
        return OF_THE_ANSWER
                .matcher(page)
                .results()
                .map(link -> HtmlUtils.htmlUnescape(link.group(1)))
                .toList();
    }

    private static String found(Pattern pattern, String page) {
        var found = pattern.matcher(page);
        assertThat(found.find()).as(pattern.pattern()).isTrue();
        return HtmlUtils.htmlUnescape(found.group(1));
    }

    private String text(String address) throws Exception {
        return pages.perform(get(URI.create(address))).andReturn().getResponse().getContentAsString();
    }
}
