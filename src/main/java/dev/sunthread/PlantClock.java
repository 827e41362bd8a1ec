package dev.sunthread;

import java.time.Clock;
import java.time.ZoneId;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.scheduling.annotation.EnableScheduling;

/** The clock that stamps when something is recorded, and the timer of what runs by itself. */
@Configuration
@EnableScheduling
class PlantClock {

    @Bean
    Clock clock() {
        return Clock.systemUTC();
    }

    /** The zone in which people of the plant read and write times. */
    @Bean
    ZoneId plantZone(@Value("${sunthread.plant.zone}") ZoneId zone) {
        return zone;
    }
}
