package dev.sunthread.scan.gs1;

/** The character sets of GS1: digits, set 82, set 39 and base64 for addresses. */
enum CharacterSet {
    N("0123456789"),
    X("!\"%&'()*+,-./0123456789:;<=>?ABCDEFGHIJKLMNOPQRSTUVWXYZ_abcdefghijklmnopqrstuvwxyz"),
    Y("#-/0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ"),
    Z("-0123456789=ABCDEFGHIJKLMNOPQRSTUVWXYZ_abcdefghijklmnopqrstuvwxyz");

    private final String characters;

    CharacterSet(String characters) {
        this.characters = characters;
    }

    boolean holds(String text) {
        return text.chars().allMatch(character -> characters.indexOf(character) >= 0);
    }

    int valueOf(char character) {
        return characters.indexOf(character);
    }
}
