package dev.sunthread.genealogy;

import java.time.Duration;
import org.springframework.boot.context.properties.ConfigurationProperties;

/**
 * How many answers are made and kept.
 *
 * @param atOnce so many at a time; each holds one connection to the database
 * @param queue so many more wait for their turn; what comes then is refused
 * @param pageWait how long a page waits before it shows how far its answer is
 * @param longestWait how long a program waits at most
 * @param lease how long an answer is made on after a page or program asked for it last
 * @param keptFor how long an answer is kept
 * @param keptLines so many lines of all answers are kept
 */
@ConfigurationProperties("sunthread.traces")
public record TraceLimits(
        int atOnce,
        int queue,
        Duration pageWait,
        Duration longestWait,
        Duration lease,
        Duration keptFor,
        long keptLines) {}
