package dev.sunthread.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import dev.sunthread.ledger.Door;
import dev.sunthread.testing.SunthreadTest;
import java.net.URI;
import java.util.ArrayDeque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import org.springframework.web.util.HtmlUtils;

/** Follows the links of every page, from the start page on, in every language. */
@SunthreadTest
class EveryLinkTests {

    private static final Pattern LINK = Pattern.compile("(?:href|src)=\"(/[^\"#]*)");
    /** Each trace links to every order, filter and file of its lines; those of one answer, one step away, are enough. */
    private static final Pattern BEYOND = Pattern.compile(
            "(/trace|/api/v1/traces)[?](?!.*[&?]lot=A-17).*(level|when|certainty|place|outermost|sort|format)=.*"
                    + "|.*(sort=.*(level|place|outermost)=|(level|place|outermost)=.*(sort|format)=|descending=true).*"
                    + "|/api/v1/traces[?].*(level|when|certainty|place|outermost)=.*");

    private static final Pattern MAIN = Pattern.compile("<main.*</main>", Pattern.DOTALL);
    private static final Pattern WAY_ON = Pattern.compile("<a [^>]*href=|<form");

    @Autowired
    Door door;

    @Autowired
    MockMvc pages;

    @Autowired
    RequestMappingHandlerMapping requestMappingHandlerMapping;

    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void everyLinkOnEveryPageLeadsSomewhere(String language) throws Exception {
        SmallPlant.withRuns(StockedPlant.built(door)).bondWithLot("12:00", "R0002", "A-99");
        Set<String> seen = new HashSet<>(Set.of("/"));
        ArrayDeque<String> waiting = new ArrayDeque<>(seen);
        while (!waiting.isEmpty()) {
            String address = waiting.poll();
            MockHttpServletResponse page = pages.perform(
                            get(URI.create(address)).header("Accept-Language", language))
                    .andReturn()
                    .getResponse();
            assertThat(page.getStatus()).as(address).isEqualTo(200);
            leadsOn(address, page);
            isWritten(language, address, page);
            links(page).stream().filter(seen::add).forEach(waiting::add);
        }
        assertThat(seen)
                .hasSizeGreaterThan(60)
                .contains("/unit?item=WALL&serial=W%2F1", "/lot?number=A-99", "/container?label=C/1")
                .contains(
                        "/cure-run?name=C%2F1", "/test-run?name=T-1", "/equipment?name=OVEN", "/carrier?name=TRAY%201")
                .contains("/expiring", "/waiting", "/holds?of=unit", "/in-process?level=receiver", "/stations")
                .contains("/station?code=BOND", "/position?station=BOND&code=V1", "/compare/answers", "/compare/joined")
                .anyMatch(link -> link.startsWith("/trace/flow?way=forward&lot=A-17&cutoff="))
                .contains("/findings?table=findings&format=xlsx");
    }

    @Test
    void everyKindOfPageIsListed() {
        Set<String> listed = EveryPage.OF_THE_SMALL_PLANT.stream()
                .map(address -> address.replaceAll("[?].*", ""))
                .collect(Collectors.toCollection(HashSet::new));
        listed.addAll(EveryPage.ELSEWHERE);
        assertThat(listed).containsAll(pagesThatAreMapped());
    }

    private List<String> pagesThatAreMapped() {
        List<String> mapped = requestMappingHandlerMapping.getHandlerMethods().entrySet().stream()
                .filter(entry -> entry.getValue().getBeanType().getName().startsWith("dev.sunthread."))
                .map(Map.Entry::getKey)
                .filter(mapping -> mapping.getMethodsCondition().getMethods().contains(RequestMethod.GET))
                .flatMap(mapping -> mapping.getPatternValues().stream())
                .filter(address -> !address.startsWith("/api/") && !address.matches(".*([.](pdf|svg)|[{].*)"))
                .toList();
        assertThat(mapped).hasSizeGreaterThan(40);
        return mapped;
    }

    /** No page leaves a person where only the browser's way back leads on. */
    private static void leadsOn(String address, MockHttpServletResponse page) throws Exception {
        if (isPage(page)) {
            Matcher main = MAIN.matcher(page.getContentAsString());
            assertThat(main.find() && WAY_ON.matcher(main.group()).find())
                    .as("a way on from " + address)
                    .isTrue();
        }
    }

    private static void isWritten(String language, String address, MockHttpServletResponse page) throws Exception {
        if (isPage(page)) {
            assertThat(page.getContentAsString())
                    .as(address)
                    .contains("<html lang=\"" + language + "\"")
                    .doesNotContain("??");
        }
    }

    private static boolean isPage(MockHttpServletResponse page) {
        return String.valueOf(page.getContentType()).startsWith("text/html")
                && !page.containsHeader("Content-Disposition");
    }

    private static List<String> links(MockHttpServletResponse page) throws Exception {
        return isPage(page)
                ? LINK.matcher(page.getContentAsString())
                        .results()
                        .map(link -> HtmlUtils.htmlUnescape(link.group(1)))
                        .filter(link -> !BEYOND.matcher(link).matches())
                        .toList()
                : List.of();
    }
}
