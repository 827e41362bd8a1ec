package dev.sunthread.cure.profile;

import dev.sunthread.kernel.verdict.Criterion;
import dev.sunthread.kernel.verdict.Digit;
import dev.sunthread.kernel.verdict.Phrase;
import java.util.Optional;

/**
 * What a record must be like to be believed.
 *
 * @param longestGap up to what distance, in seconds, two readings tell what was between them
 * @param fastestChange the fastest that the truth can change, per second; a faster change is a fault of the sensor
 */
public record RecordingRule(double longestGap, double fastestChange) {

    /**
     * Says so if a sensor jumps within a run: nothing can be accepted on its readings then.
     *
     * @param run how long the run took, in seconds
     */
    public Optional<Criterion> jumps(SensorReadings sensor, double run) {
        return sensor.readings().segments().stream()
                .filter(segment -> segment.end() > 0 && segment.start() < run)
                .filter(segment -> Math.abs(segment.last() - segment.first()) > fastestChange * segment.seconds())
                .findFirst()
                .map(segment -> Criterion.flaw(
                        Phrase.of("judged.sensor.jumps", sensor.sensor()),
                        Phrase.of(
                                "judged.sensor.jumps.why",
                                Digit.plain(segment.first()),
                                Digit.plain(segment.last()),
                                Digit.plain(segment.seconds()))));
    }
}
