package dev.sunthread.access;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.authentication;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.Kinds;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SignedInPerson;
import dev.sunthread.testing.SunthreadTest;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.MockMvc;

/** Who may say what: every kind, sent as an envelope by every role. {@code -Dsunthread.docs.write=true} writes the table. */
@SunthreadTest
class KindMatrixTests {

    private static final Matrix MATRIX = new Matrix("kind");

    @Autowired
    Kinds kinds;

    @Autowired
    Door door;

    @Autowired
    MockMvc http;

    @Test
    void everyKindIsTakenFromTheRolesThatAreDocumented() throws Exception {
        Map<String, String> found = new TreeMap<>();
        for (var kind : kinds.all()) {
            found.put(kind.name(), Matrix.cells(taken(kind.name())));
        }
        if (Boolean.getBoolean("sunthread.docs.write")) {
            MATRIX.write(found);
        }
        assertThat(MATRIX.documented()).isEqualTo(found);
    }

    @Test
    void whoMayNotReleaseALotMayNotTakeItsReleaseBackEither() throws Exception {
        Plant plant = Plant.released(door);
        plant.receipt("07:00", "A-17", "ADH", "F-9");
        plant.say("incoming-release", "07:30", Map.of("lot", "A-17", "verdict", "released", "inspected", "papers"));
        String release = plant.lastId();
        String taken = "{\"entry\": \"" + release + "\", \"why\": \"mistaken\"}";
        assertThat(status("/api/v1/envelopes/do", envelope("void", taken), Role.OPERATOR))
                .isEqualTo(403);
        assertThat(status("/api/v1/envelopes/do", envelope("void", taken), Role.QUALITY))
                .isEqualTo(201);
    }

    private List<Boolean> taken(String kind) throws Exception {
        List<Boolean> taken = new ArrayList<>();
        for (Role role : Role.values()) {
            int asked = status("/api/v1/envelopes/do", envelope(kind, "{}"), role);
            int told = status("/api/v1/envelopes/told", envelope(kind, "{}"), role);
            assertThat(told == 403).as("told as asked").isEqualTo(asked == 403);
            taken.add(asked != 403);
        }
        return taken;
    }

    private int status(String address, String envelope, Role role) throws Exception {
        return http.perform(post(address)
                        .contentType(MediaType.APPLICATION_JSON)
                        .content(envelope)
                        .with(authentication(SignedInPerson.of(role))))
                .andReturn()
                .getResponse()
                .getStatus();
    }

    private static String envelope(String kind, String body) {
        return """
                {"id": "k-%s", "kind": "%s", "version": 1, "occurredAt": "2026-03-10T08:00:00+01:00", "actor": "op-1",
                 "source": "x", "body": %s}""".formatted(kind, kind, body);
    }
}
