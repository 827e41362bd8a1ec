package dev.sunthread.web;

import static org.hamcrest.Matchers.containsString;
import static org.mockito.Mockito.doThrow;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.sunthread.testing.SunthreadTest;
import java.sql.SQLException;
import java.sql.SQLTransientConnectionException;
import java.util.Locale;
import javax.sql.DataSource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.test.context.bean.override.mockito.MockitoSpyBean;
import org.springframework.test.web.servlet.MockMvc;

/** While the database is away nobody is told to sign in anew, and every address says when to come again. */
@SunthreadTest
class DatabaseAwayTests {

    @Autowired
    MockMvc pages;

    @MockitoSpyBean
    DataSource database;

    @Test
    void aTokenIsNotRefusedThatCanNotBeLookedUp() throws Exception {
        away(new SQLTransientConnectionException("no connection within the time"));

        pages.perform(get("/api/v1/traces?lot=A-17").header(HttpHeaders.AUTHORIZATION, "Bearer sun_anything"))
                .andExpect(status().isServiceUnavailable())
                .andExpect(header().string(HttpHeaders.RETRY_AFTER, "5"))
                .andExpect(content().contentTypeCompatibleWith(MediaType.APPLICATION_PROBLEM_JSON))
                .andExpect(jsonPath("$.detail").value(containsString("database")))
                .andExpect(jsonPath("$.remedy").value(containsString("nothing twice")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/unit?item=RCV&serial=R0001", "/findings"})
    void everyPageSaysSoInTheReadersLanguage(String address) throws Exception {
        away(new SQLException("terminating connection due to administrator command", "57P01"));

        pages.perform(get(address).locale(Locale.GERMAN))
                .andExpect(status().isServiceUnavailable())
                .andExpect(header().string(HttpHeaders.RETRY_AFTER, "5"))
                .andExpect(content().string(containsString("<html lang=\"de\">")))
                .andExpect(content().string(containsString("Die Datenbank ist nicht erreichbar")));
        pages.perform(get(address).locale(Locale.FRENCH))
                .andExpect(content().string(containsString("<html lang=\"en\">")))
                .andExpect(content().string(containsString("The database is away")));
    }

    @Test
    void aRecordIsAnsweredAsNotTaken() throws Exception {
        away(new SQLException("An I/O error occurred while sending to the backend", "08006"));

        pages.perform(post("/api/v1/envelopes/told")
                        .contentType(MediaType.APPLICATION_JSON)
                        .content("""
                                {"id": "b-1", "kind": "birth", "version": 1, "occurredAt": "2026-03-10T12:00:00+01:00",
                                 "actor": "op", "source": "BOND", "body": {"units": [{"item": "RCV", "serial": "R0009"}]}}
                                """))
                .andExpect(status().isServiceUnavailable());
    }

    @Test
    void healthTellsIt() throws Exception {
        pages.perform(get("/actuator/health")).andExpect(status().isOk());

        away(new SQLTransientConnectionException("no connection within the time"));

        for (String health : new String[] {"/actuator/health", "/actuator/health/readiness"}) {
            pages.perform(get(health))
                    .andExpect(status().isServiceUnavailable())
                    .andExpect(content().string(containsString("DOWN")));
        }
        pages.perform(get("/actuator/health/liveness")).andExpect(status().isOk());
    }

    private void away(SQLException why) throws SQLException {
        doThrow(why).when(database).getConnection();
    }
}
