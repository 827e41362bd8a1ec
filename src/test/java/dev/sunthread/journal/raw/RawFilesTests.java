package dev.sunthread.journal.raw;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.journal.Sender;
import dev.sunthread.ledger.Door;
import dev.sunthread.testing.RawData;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.testing.Workshop;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Files as rigs and loggers write them. */
@SunthreadTest
class RawFilesTests {

    private static final String MAPPING = """
            volts: U [V]
            amperes: I [A]
            serial: SN
            run: Test
            endedAt: Time
            item = RCV
            specification = PULL
            equipment = RIG
            verdict = pass
            sweep = light
            """;

    private static final String POINTS = """
            "Test";"SN";"Time";"U [V]";"I [A]"
            F1;R1;2026-03-10T10:00:00+01:00;-0,1;1,001
            F1;R1;2026-03-10T10:00:00+01:00;0;1
            F1;R1;2026-03-10T10:00:00+01:00;0,4;0,997
            F1;R1;2026-03-10T10:00:00+01:00;0,6;0,97
            F1;R1;2026-03-10T10:00:00+01:00;0,7;0,7
            F1;R1;2026-03-10T10:00:00+01:00;0,8;-0,2
            F2;R2;2026-03-10T10:05:00+01:00;0;NaN
            F3;R99;2026-03-10T10:06:00+01:00;0;1
            """;

    @Autowired
    Door door;

    @Autowired
    RawFiles files;

    @Autowired
    JdbcClient jdbc;

    @BeforeEach
    void released() {
        Workshop workshop = Workshop.released(door);
        workshop.plant().say("specification", "2 00:00", RawData.powerRevision("B", "0.5"));
        workshop.plant().say("recipe", "2 00:00", RawData.bakeRevision("B", "20"));
    }

    @Test
    void sweepsComeInByMappedHeadersAndAreJudged() throws IOException {
        RawReport report = take(RawKind.TEST_RUN, POINTS, MAPPING);
        assertThat(report.runs().stream().map(run -> run.run() + " " + run.outcome()))
                .containsExactly("F2 not taken in", "F1 accepted", "F3 accepted with finding");
        assertThat(report.runs().get(0).reason()).isEqualTo("Row 8: amperes \"NaN\" is not a number");
        assertThat(report.runs().get(2).reason()).contains("R99");
        assertThat(jdbc.sql("SELECT outcome FROM electrical.standing ORDER BY entry")
                        .query(String.class)
                        .list())
                .as("so few points leave the highest power open")
                .containsExactly("NOT_PROVEN", "NOT_PROVEN");
    }

    @Test
    void sendingAFileAgainRecordsNothingTwice() throws IOException {
        take(RawKind.TEST_RUN, POINTS, MAPPING);
        assertThat(take(RawKind.TEST_RUN, POINTS, MAPPING).runs().get(1).outcome())
                .isEqualTo("known before");
        assertThat(jdbc.sql("SELECT count(*) FROM electrical.run_record")
                        .query(Long.class)
                        .single())
                .isEqualTo(2);
    }

    @Test
    void profilesComeInWithColumnsOfTheirOwnNames() throws IOException {
        String readings = """
                run,recipe,equipment,startedAt,endedAt,units,sensor,quantity,unitOfMeasure,seconds,reading
                P1,BAKE,OVEN,2026-03-10T09:30:00+01:00,2026-03-10T10:00:00+01:00,RCV R1;RCV R2,TC-1,temperature,degC,0,150
                P1,BAKE,OVEN,2026-03-10T09:30:00+01:00,2026-03-10T10:00:00+01:00,RCV R1;RCV R2,TC-1,temperature,degC,900,150
                P1,BAKE,OVEN,2026-03-10T09:30:00+01:00,2026-03-10T10:00:00+01:00,RCV R1;RCV R2,TC-1,temperature,degC,1800,150
                """;
        assertThat(take(RawKind.CURE_RUN, readings, null).runs())
                .extracting(RawReport.Run::outcome)
                .containsExactly("accepted");
        assertThat(jdbc.sql("SELECT outcome FROM cure.standing")
                        .query(String.class)
                        .list())
                .containsExactly("PASSED");
        assertThat(jdbc.sql("SELECT count(*) FROM cure.run_unit")
                        .query(Long.class)
                        .single())
                .isEqualTo(2);
    }

    @Test
    void jsonComesInWithPlainNumbers() throws IOException {
        String json = """
                [{"run": "J1", "occurredAt": "2026-03-10T10:00:00+01:00", "unit": {"item": "RCV", "serial": "R1"},
                  "specification": "PULL", "equipment": "RIG", "verdict": "fail", "sweeps": [{"name": "light",
                  "volts": [-0.1, 0, 0.4, 0.6, 0.7, 0.8], "amperes": [0.2, 0.2, 0.2, 0.19, 0.1, -0.05]}]}]
                """;
        assertThat(take(RawKind.TEST_RUN, json, null).runs())
                .extracting(RawReport.Run::outcome)
                .containsExactly("accepted");
        assertThat(jdbc.sql("SELECT outcome FROM electrical.standing")
                        .query(String.class)
                        .list())
                .containsExactly("FAILED");
    }

    @Test
    void whatIsNoFileOfRawDataIsToldWithWords() throws IOException {
        assertThat(take(RawKind.TEST_RUN, "", null).reason()).isEqualTo("The file has no rows");
        assertThat(take(RawKind.TEST_RUN, "a,b\n1,2\n", MAPPING).reason()).startsWith("The file has no column");
        assertThat(take(RawKind.TEST_RUN, "a,b\n1,2\n", null).reason()).isEqualTo("Row 2 says no run");
        assertThat(take(RawKind.TEST_RUN, "{\"run\": 7}", null).reason()).isEqualTo("Object 1 names no run");
        assertThat(take(RawKind.TEST_RUN, "[{", null).reason()).startsWith("The file is no JSON");
        assertThat(take(RawKind.TEST_RUN, "a,b\n1,2\n", "volts").reason()).isEqualTo("\"volts\" maps no field");
    }

    private RawReport take(RawKind kind, String text, @Nullable String mapping) throws IOException {
        return files.take(kind, text.getBytes(StandardCharsets.UTF_8), mapping, new Sender("op-1", "rig.csv"));
    }
}
