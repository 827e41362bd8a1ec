package dev.sunthread.web.traffic;

import java.time.Duration;
import org.springframework.boot.context.properties.ConfigurationProperties;

/**
 * What is left to one address, and how long it may take.
 *
 * @param connectionsByAddress connections that are open from one address; more are closed at once
 * @param bodies requests of all addresses whose body is not all there; more are answered with 503
 * @param bodiesByAddress the same of one address
 * @param bodyWithin in which time a body has to be there, however small it is
 * @param bodyPace bytes a second, by which a larger body has more time
 */
@ConfigurationProperties("sunthread.traffic")
record TrafficProperties(
        int connectionsByAddress, int bodies, int bodiesByAddress, Duration bodyWithin, int bodyPace) {}
