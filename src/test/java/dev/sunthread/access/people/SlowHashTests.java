package dev.sunthread.access.people;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.access.AccessProperties;
import java.time.Duration;
import java.util.HexFormat;
import org.bouncycastle.crypto.generators.Argon2BytesGenerator;
import org.bouncycastle.crypto.params.Argon2Parameters;
import org.junit.jupiter.api.Test;

class SlowHashTests {

    private final SlowHash hash = costing(64, 1);

    private static SlowHash costing(int memory, int passes) {
        var none = new AccessProperties.Length(Duration.ZERO, Duration.ZERO);
        var delays = new AccessProperties.LockOut(5, Duration.ZERO, Duration.ZERO);
        return new SlowHash(new AccessProperties(false, none, none, delays, new AccessProperties.Hash(memory, passes)));
    }

    @Test
    void knowsASecretAgainAndNoOther() {
        String known = hash.of("nine lenses of glass");
        assertThat(hash.fits("nine lenses of glass", known)).isTrue();
        assertThat(hash.fits("nine lenses of glas", known)).isFalse();
        assertThat(hash.fits("", null)).isFalse();
    }

    @Test
    void saltsEverySecretAnew() {
        assertThat(hash.of("the same")).isNotEqualTo(hash.of("the same")).startsWith("$argon2id$v=19$m=64,t=1,p=1$");
    }

    @Test
    void knowsWhichHashesWereMadeAtALowerCost() {
        assertThat(costing(128, 1).isWeak(hash.of("secret"))).isTrue();
        assertThat(hash.isWeak(hash.of("secret"))).isFalse();
    }

    @Test
    void restsOnALibraryThatComputesTheTestVector() {
        // RFC 9106, section 5.3: the test vector of Argon2id
        var parameters = new Argon2Parameters.Builder(Argon2Parameters.ARGON2_id)
                .withVersion(Argon2Parameters.ARGON2_VERSION_13)
                .withMemoryAsKB(32)
                .withIterations(3)
                .withParallelism(4)
                .withSalt(filled(16, 2))
                .withSecret(filled(8, 3))
                .withAdditional(filled(12, 4))
                .build();
        var generator = new Argon2BytesGenerator();
        generator.init(parameters);
        byte[] tag = new byte[32];
        generator.generateBytes(filled(32, 1), tag);
        assertThat(HexFormat.of().formatHex(tag))
                .isEqualTo("0d640df58d78766c08c037a34a8b53c9d01ef0452d75b65eb52520e96b01e659");
    }

    private static byte[] filled(int length, int value) {
        byte[] bytes = new byte[length];
        java.util.Arrays.fill(bytes, (byte) value);
        return bytes;
    }
}
