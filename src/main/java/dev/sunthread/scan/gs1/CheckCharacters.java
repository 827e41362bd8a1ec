package dev.sunthread.scan.gs1;

/** The pair of check characters of a global model number: modulo 1021 with prime weights from the right. */
final class CheckCharacters {

    private static final String PAIRED = "23456789ABCDEFGHJKLMNPQRSTUVWXYZ";
    private static final int[] PRIMES = {
        2, 3, 5, 7, 11, 13, 17, 19, 23, 29, 31, 37, 41, 43, 47, 53, 59, 61, 67, 71, 73, 79, 83
    };

    private CheckCharacters() {}

    static boolean areRight(String text) {
        int length = text.length() - 2;
        if (length < 1 || length > PRIMES.length) {
            return false;
        }
        int sum = 0;
        for (int i = 0; i < length; i++) {
            sum += CharacterSet.X.valueOf(text.charAt(i)) * PRIMES[length - 1 - i];
        }
        int pair = sum % 1021;
        return text.charAt(length) == PAIRED.charAt(pair >> 5) && text.charAt(length + 1) == PAIRED.charAt(pair & 31);
    }
}
