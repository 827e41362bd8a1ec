package dev.sunthread.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import com.jayway.jsonpath.JsonPath;
import dev.sunthread.ledger.Door;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import java.net.URI;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;

/** Two units and two answers side by side. */
@SunthreadTest
class ComparePageTests {

    private static final String WALLS = "/compare/units?leftItem=WALL&leftSerial=W/1&rightItem=WALL&rightSerial=W/2";

    @Autowired
    Door door;

    @Autowired
    MockMvc pages;

    Plant plant;

    @BeforeEach
    void built() {
        plant = SmallPlant.built(door);
        plant.birth("12:00", "WALL", "W/2");
        plant.bondWithLot("12:01", "R0003", "A-18");
        plant.install("12:02", "RCV R0003", "WALL W/2", "1");
        plant.install("12:03", "RCV R0002", "WALL W/2", "10");
    }

    @Test
    void tellsUnitsApartPositionByPosition() throws Exception {
        assertThat(text(WALLS))
                .contains("1 receiver RCV R0001 receiver RCV R0003 = same", "10 receiver RCV R0002 ▶ only right");
    }

    @Test
    void tellsUnitsApartLotByLot() throws Exception {
        assertThat(text(WALLS)).contains("ADH A-17 1 1 = same", "ADH A-18 0 1 ▶ only right");
        assertThat(text(WALLS + "&differing=true"))
                .contains("RCV R0002 ▶ only right")
                .doesNotContain("= same");
        assertThat(body(WALLS + "&table=lots&format=csv")).contains("ADH,A-18,0,1,only right");
    }

    @Test
    void saysWhichUnitIsNotRecorded() throws Exception {
        assertThat(text(WALLS.replace("W/2", "W/9"))).contains("No unit WALL W/9 is recorded");
        assertThat(text("/compare/units")).contains("Two units side by side");
    }

    @Test
    void tellsWhatJoinedAndLeftAnAnswer() throws Exception {
        String before = answer();
        plant.birth("12:29", "RCV", "R0010");
        plant.bondAt("12:30", "R0010", "V1", "A-17");
        String after = answer();
        String grown = "/compare/answers?left=" + before + "&right=" + after;
        assertThat(text(grown)).contains("+ joined receiver RCV R0010 not in it certain", "receiver 3 1 0 0");
        assertThat(text("/compare/answers?left=" + after + "&right=" + before))
                .contains("− left receiver RCV R0010 certain not in it");
        assertThat(text(grown + "&show=left")).contains("Nothing differs here");
        assertThat(text(grown + "&show=joined&level=wall")).contains("Nothing differs here");
        assertThat(body(grown + "&show=joined&format=csv")).contains("joined,receiver,RCV,R0010,plant,,certain,");
    }

    @Test
    void tellsWhoseClassChanged() throws Exception {
        String before = answer();
        plant.bondAt("12:30", "R0003", "V1", "A-17");
        assertThat(text("/compare/answers?left=" + before + "&right=" + answer() + "&show=changed"))
                .contains("≠ changed receiver RCV R0003 possible certain");
    }

    @Test
    void findsAnAnswerByTheBeginningOfItsHash() throws Exception {
        String id = answer();
        String hash = JsonPath.read(body("/api/v1/traces?lot=A-17"), "$.hash");
        assertThat(text("/compare/answers?left=" + id + "&right=" + hash.substring(0, 12)))
                .contains("equal: the same answer", "Nothing differs here");
        assertThat(text("/compare/answers?left=" + id + "&right=nothing"))
                .contains("No kept answer has the id or hash");
    }

    @Test
    void listsTheAnswersThatAreKept() throws Exception {
        answer();
        assertThat(text("/compare/answers")).contains("where did A-17 go");
    }

    private String answer() throws Exception {
        return JsonPath.read(body("/api/v1/traces?way=forward&lot=A-17"), "$.id");
    }

    private String body(String address) throws Exception {
        return pages.perform(get(URI.create(address))).andReturn().getResponse().getContentAsString();
    }

    private String text(String address) throws Exception {
        String page = body(address);
        return page.substring(page.indexOf("<main"), page.indexOf("</main>"))
                .replaceAll("<[^>]*>", " ")
                .replaceAll("\\s+", " ");
    }
}
