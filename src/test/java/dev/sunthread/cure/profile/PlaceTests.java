package dev.sunthread.cure.profile;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.kernel.verdict.Span;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Which sensor is nearest to a position. */
class PlaceTests {

    private static final List<SensorReadings> GRID = List.of(at("A", "R1C1"), at("B", "R1C4"), at("C", "R4C1"));

    @Test
    void numberingSaysHowFarApartPositionsAre() {
        assertThat(Place.of("R1C1").distance(Place.of("R4C5"))).hasValue(5);
        assertThat(Place.of("shelf 3").distance(Place.of("shelf 3"))).hasValue(0);
        assertThat(Place.of("door").distance(Place.of("back"))).isEmpty();
        assertThat(Place.of("S1").distance(Place.of("S1-2"))).isEmpty();
    }

    @Test
    void nearestSensorsAreChosen() {
        assertThat(Place.nearest(GRID, "R1C3"))
                .extracting(SensorReadings::sensor)
                .containsExactly("B");
        assertThat(Place.nearest(GRID, "R3C3"))
                .extracting(SensorReadings::sensor)
                .containsExactly("B", "C");
    }

    @Test
    void allSensorsCountWherePositionsSayNothing() {
        assertThat(Place.nearest(GRID, null)).isEqualTo(GRID);
        assertThat(Place.nearest(GRID, "door")).isEqualTo(GRID);
        assertThat(Place.nearest(List.of(at("A", null)), "R1C1")).hasSize(1);
    }

    private static SensorReadings at(String sensor, @Nullable String position) {
        return new SensorReadings(sensor, position, Readings.of(new double[] {0}, new double[] {20}), Span.exactly(0));
    }
}
