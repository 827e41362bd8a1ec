package dev.sunthread.access.people;

import dev.sunthread.access.AccessProperties;
import java.util.concurrent.Semaphore;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.springframework.security.crypto.argon2.Argon2PasswordEncoder;
import org.springframework.stereotype.Component;

/** Argon2id (RFC 9106) over passwords and PINs, each with a salt of its own. */
@Component
class SlowHash {

    private static final int SALT_BYTES = 16;
    private static final int HASH_BYTES = 32;

    /** Each takes much memory; those that come meanwhile wait. */
    private final Semaphore atOnce = new Semaphore(2 * Runtime.getRuntime().availableProcessors());

    private final Argon2PasswordEncoder encoder;
    private final String ofNothing;

    SlowHash(AccessProperties properties) {
        var cost = properties.hash();
        this.encoder = new Argon2PasswordEncoder(SALT_BYTES, HASH_BYTES, 1, cost.memory(), cost.passes());
        this.ofNothing = of("");
    }

    String of(String secret) {
        return String.valueOf(inTurn(() -> encoder.encode(secret)));
    }

    /** Whether a secret is the one of this hash; takes as long where there is no hash. */
    boolean fits(String secret, @Nullable String hash) {
        boolean fits = inTurn(() -> encoder.matches(secret, hash == null ? ofNothing : hash));
        return hash != null && fits;
    }

    private <T> T inTurn(Supplier<T> work) {
        atOnce.acquireUninterruptibly();
        try {
            return work.get();
        } finally {
            atOnce.release();
        }
    }

    /** Whether a hash was made at a lower cost than would be taken now. */
    boolean isWeak(String hash) {
        return encoder.upgradeEncoding(hash);
    }
}
