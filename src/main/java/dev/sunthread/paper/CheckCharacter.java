package dev.sunthread.paper;

/**
 * The check character of the hybrid system MOD 37,36 of ISO/IEC 7064: any one wrong character is noticed, and nearly
 * every two that are swapped.
 */
final class CheckCharacter {

    private static final String CHARACTERS = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";
    private static final int MODULUS = 36;

    private CheckCharacter() {}

    /** The character to put behind a text of digits and the letters A to Z. */
    static char of(String text) {
        int left = (MODULUS + 1 - carried(text)) % MODULUS;
        return CHARACTERS.charAt(left);
    }

    private static int carried(String text) {
        int carried = MODULUS;
        for (char character : text.toCharArray()) {
            int sum = (carried + CHARACTERS.indexOf(character)) % MODULUS;
            carried = (sum == 0 ? MODULUS : sum) * 2 % (MODULUS + 1);
        }
        return carried;
    }
}
