package dev.sunthread.web;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.Manner;
import dev.sunthread.testing.SunthreadTest;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;

/** The start page, search, and the pages of one unit and one lot. */
@SunthreadTest
class PageTests {

    @Autowired
    Door door;

    @Autowired
    MockMvc pages;

    @Test
    void tellsHowToBeginWhileNothingIsRecorded() throws Exception {
        pages.perform(get("/"))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("Nothing is recorded yet")))
                .andExpect(content().string(containsString("href=\"/journal\"")));
    }

    @Test
    void countsWhatWaitsAndListsWhatHappenedLast() throws Exception {
        SmallPlant.built(door);
        pages.perform(get("/"))
                .andExpect(content().string(containsString("<strong>1</strong> units")))
                .andExpect(content().string(containsString("shipment")));
    }

    @Test
    void leadsStraightToTheOneThingThatIsCalledSo() throws Exception {
        SmallPlant.built(door);
        pages.perform(get("/search").param("q", " R0001 ")).andExpect(redirectedUrl("/unit?item=RCV&serial=R0001"));
        pages.perform(get("/search").param("q", "A-17")).andExpect(redirectedUrl("/lot?number=A-17"));
        pages.perform(get("/search").param("q", "FAR/9 1"))
                .andExpect(redirectedUrl("/trace?way=forward&supplierLot=FAR%2F9%201"));
    }

    @Test
    void offersNearMatchesAndChoosesNone() throws Exception {
        SmallPlant.built(door);
        for (String typed : new String[] {"r0001", "RO001", "R1", "R00"}) {
            pages.perform(get("/search").param("q", typed))
                    .andExpect(status().isOk())
                    .andExpect(content().string(containsString("Did you mean")))
                    .andExpect(content().string(containsString("href=\"/unit?item=RCV&amp;serial=R0001\"")));
        }
    }

    @Test
    void listsEveryThingThatIsCalledTheSame() throws Exception {
        SmallPlant.built(door);
        door.accept(SmallPlant.birthOf("WALL", "R0001"), Manner.TOLD);
        pages.perform(get("/search").param("q", "R0001"))
                .andExpect(content().string(containsString("Several things are called exactly so")));
    }

    @Test
    void showsWhereAUnitIsAndWhatWentIntoIt() throws Exception {
        SmallPlant.built(door);
        pages.perform(get("/unit").param("item", "RCV").param("serial", "R0001"))
                .andExpect(content().string(containsString("shipped to Sunny Field, shipment S-1")))
                .andExpect(content().string(containsString("href=\"/unit?item=WALL&amp;serial=W%2F1\"")))
                .andExpect(content().string(containsString("href=\"/lot?number=A-17\"")))
                .andExpect(content()
                        .string(containsString(
                                "from position <a class=\"serial\" href=\"/position?station=BOND&amp;code=V1\"")));
    }

    @Test
    void showsWhatIsAndWhatWasInsideAUnit() throws Exception {
        SmallPlant.built(door);
        pages.perform(get("/unit").param("item", "WALL").param("serial", "W/1").param("built", "ever"))
                .andExpect(content().string(containsString("WALL W/1")))
                .andExpect(content().string(containsString("was inside from")))
                .andExpect(content().string(containsString("On hold:")));
    }

    @Test
    void strikesWhatWasTakenBack() throws Exception {
        SmallPlant.built(door);
        pages.perform(get("/unit").param("item", "RCV").param("serial", "R0003"))
                .andExpect(content().string(containsString("class=\"voided\"")))
                .andExpect(content().string(containsString("scanned by mistake")));
    }

    @Test
    void showsWhereALotCameFromAndWhereItWasLoaded() throws Exception {
        SmallPlant.built(door);
        pages.perform(get("/lot").param("number", "A-17"))
                .andExpect(content().string(containsString("supplierLot=FAR")))
                .andExpect(content().string(containsString("loaded now")))
                .andExpect(content().string(containsString("href=\"/trace?way=forward&amp;lot=A-17\"")));
    }

    @Test
    void offersNearMatchesOfAnUnknownUnitOrLot() throws Exception {
        SmallPlant.built(door);
        pages.perform(get("/unit").param("item", "RCV").param("serial", "r0001"))
                .andExpect(status().isNotFound())
                .andExpect(content().string(containsString("serial=R0001")));
        pages.perform(get("/lot").param("number", "a-17"))
                .andExpect(status().isNotFound())
                .andExpect(content().string(containsString("/lot?number=A-17")));
    }

    @Test
    void listsHoldsWithWhatTheyHold() throws Exception {
        SmallPlant.built(door);
        pages.perform(get("/holds"))
                .andExpect(content().string(containsString("scratched")))
                .andExpect(content().string(not(containsString("Nothing is on hold"))));
    }
}
