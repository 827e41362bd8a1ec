package dev.sunthread.web.language;

import static org.hamcrest.Matchers.containsString;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.cookie;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.sunthread.ledger.Door;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.web.SmallPlant;
import jakarta.servlet.http.Cookie;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultMatcher;

/** Which language a page is written in. */
@SunthreadTest
class LanguageTests {

    private static final String GERMAN = "Was möchten Sie verfolgen?";
    private static final String ENGLISH = "What do you want to trace?";

    @Autowired
    Door door;

    @Autowired
    MockMvc pages;

    @Test
    void writesWhatTheBrowserAsksFor() throws Exception {
        // RFC 9110, section 12.5.4: the greatest weight is preferred; RFC 4647, section 3.4: de-AT falls back to de
        for (String asked : new String[] {"de", "de-AT", "fr, de;q=0.8, en;q=0.5", "en;q=0.3, de;q=0.9"}) {
            pages.perform(get("/").header("Accept-Language", asked))
                    .andExpect(says(GERMAN))
                    .andExpect(says("<html lang=\"de\""));
        }
    }

    @Test
    void writesEnglishForAllOthersWhateverTheMachineSpeaks() throws Exception {
        Locale machine = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            pages.perform(get("/")).andExpect(says(ENGLISH)).andExpect(says("<html lang=\"en\""));
            pages.perform(get("/").header("Accept-Language", "fr"))
                    .andExpect(says(ENGLISH))
                    .andExpect(says("<html lang=\"en\""));
        } finally {
            Locale.setDefault(machine);
        }
    }

    @Test
    void keepsWhatAPersonChose() throws Exception {
        pages.perform(post("/language").param("to", "de").param("back", "/lot?number=A-17"))
                .andExpect(redirectedUrl("/lot?number=A-17"))
                .andExpect(cookie().value("language", "de"))
                .andExpect(cookie().httpOnly("language", true));
        pages.perform(get("/").cookie(new Cookie("language", "de")).header("Accept-Language", "en"))
                .andExpect(says(GERMAN))
                .andExpect(says("English"));
    }

    @Test
    void leadsToNoOtherHostAndKeepsNoLanguageThatThereIsNot() throws Exception {
        for (String other : new String[] {"https://example.org/", "//example.org", "/\\example.org", ""}) {
            pages.perform(post("/language").param("to", "de").param("back", other))
                    .andExpect(redirectedUrl("/"));
        }
        pages.perform(post("/language").param("to", "tlh")).andExpect(cookie().doesNotExist("language"));
        pages.perform(get("/").cookie(new Cookie("language", "no language"))).andExpect(status().isOk());
    }

    @Test
    void givesHeadingsOfFilesInTheLanguageOfThePage() throws Exception {
        SmallPlant.built(door);
        pages.perform(get("/holds").param("format", "csv")).andExpect(says("Reason,Since,Placed by entry"));
        pages.perform(get("/holds").param("format", "csv").header("Accept-Language", "de"))
                .andExpect(says("Grund,Seit,Gesetzt durch Eintrag"));
    }

    @Test
    void leavesTheInterfacesOfMachinesAsTheyAre() throws Exception {
        SmallPlant.built(door);
        pages.perform(get("/api/v1/traces.csv").param("lot", "A-17").header("Accept-Language", "de"))
                .andExpect(says("kind,level,item,name"))
                .andExpect(says("certain"));
        pages.perform(get("/api/v1/traces/flow").param("lot", "A-17").header("Accept-Language", "de"))
                .andExpect(says("\"suspects\""));
    }

    private static ResultMatcher says(String words) {
        return content().string(containsString(words));
    }
}
