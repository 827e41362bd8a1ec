package dev.sunthread.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.NullSource;
import org.junit.jupiter.params.provider.ValueSource;

class ServerChoiceTests {

    @Test
    void prefersAGivenServerAndAsksNoEngine() {
        BooleanSupplier engine = () -> {
            throw new AssertionError("asked the engine");
        };
        assertThat(ServerChoice.of("jdbc:postgresql://db/sunthread", engine)).isEqualTo(ServerChoice.GIVEN);
    }

    @ParameterizedTest
    @NullSource
    @ValueSource(strings = {"", " "})
    void takesAContainerWhenNoUrlIsGivenAndAnEngineAnswers(String url) {
        assertThat(ServerChoice.of(url, () -> true)).isEqualTo(ServerChoice.CONTAINER);
    }

    @ParameterizedTest
    @NullSource
    @ValueSource(strings = {"", " "})
    void fallsBackToTheEmbeddedServer(String url) {
        assertThat(ServerChoice.of(url, () -> false)).isEqualTo(ServerChoice.EMBEDDED);
    }
}
