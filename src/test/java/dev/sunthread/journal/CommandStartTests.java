package dev.sunthread.journal;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.testing.FreshDatabase;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The application as its commands start it: without pages, and without anybody signed in. */
@SpringBootTest(webEnvironment = WebEnvironment.NONE)
@FreshDatabase
class CommandStartTests {

    @Autowired
    Imports imports;

    @Autowired
    JdbcClient jdbc;

    @Test
    void importsWithoutAnybodySignedIn() throws IOException {
        imports.run(EveryKind.stream(), new Sender("import", "every-kind.ndjson"), line -> {});
        assertThat(jdbc.sql("SELECT DISTINCT recorded_by FROM ledger.entry")
                        .query()
                        .listOfRows())
                .singleElement()
                .satisfies(row -> assertThat(row).containsEntry("recorded_by", null));
    }
}
