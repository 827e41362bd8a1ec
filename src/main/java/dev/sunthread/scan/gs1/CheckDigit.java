package dev.sunthread.scan.gs1;

/** The check digit of GTIN, GLN, SSCC and their kin: modulo 10 with weights 3 and 1 from the right. */
public final class CheckDigit {

    private CheckDigit() {}

    /** The digit that belongs behind these digits. */
    public static char of(String digits) {
        int sum = 0;
        for (int i = 0; i < digits.length(); i++) {
            int weight = (digits.length() - i) % 2 == 1 ? 3 : 1;
            sum += weight * (digits.charAt(i) - '0');
        }
        return (char) ('0' + (10 - sum % 10) % 10);
    }

    /** Whether the last of these digits is the check digit of those before it. */
    public static boolean isRight(String digits) {
        int last = digits.length() - 1;
        return last > 0 && of(digits.substring(0, last)) == digits.charAt(last);
    }
}
