package dev.sunthread.access;

import java.time.Duration;
import org.springframework.boot.context.properties.ConfigurationProperties;

/**
 * How signing in behaves.
 *
 * @param firstAdministrator whether a start that finds no person makes an administrator
 * @param desk sessions of those who signed in by password
 * @param station sessions of those who signed in by badge and PIN
 * @param lockOut the delay after failed attempts
 * @param hash how costly the Argon2id hash of passwords and PINs is
 */
@ConfigurationProperties("sunthread.access")
public record AccessProperties(boolean firstAdministrator, Length desk, Length station, LockOut lockOut, Hash hash) {

    /** After which time without a request a session ends, and after which time in any case. */
    public record Length(Duration idle, Duration longest) {}

    /** From which failure on there is a delay, the first delay, which doubles with each failure, and the longest. */
    public record LockOut(int after, Duration first, Duration longest) {}

    /** Memory in KiB and passes over it. */
    public record Hash(int memory, int passes) {}
}
