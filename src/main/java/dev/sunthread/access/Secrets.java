package dev.sunthread.access;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;

/** Random secrets that people type or machines send, and the hash by which one is known again. */
public final class Secrets {

    private static final SecureRandom RANDOM = new SecureRandom();
    /** Without letters and digits that look alike. */
    private static final String TYPED = "abcdefghijkmnpqrstuvwxyz23456789";

    private static final int BITS_OF_TOKENS = 256;

    private Secrets() {}

    /** A password of four groups of four signs, about 79 bits, to be typed once. */
    public static String typed() {
        StringBuilder password = new StringBuilder();
        for (int i = 0; i < 16; i++) {
            password.append(i > 0 && i % 4 == 0 ? "-" : "").append(TYPED.charAt(RANDOM.nextInt(TYPED.length())));
        }
        return password.toString();
    }

    /** 256 random bits for a machine. */
    public static String sent(String prefix) {
        byte[] bytes = new byte[BITS_OF_TOKENS / 8];
        RANDOM.nextBytes(bytes);
        return prefix + Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    /** SHA-256: enough for what nobody could guess in any number of tries; passwords and PINs need a slow hash. */
    public static byte[] hash(String secret) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(secret.getBytes(StandardCharsets.UTF_8));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
