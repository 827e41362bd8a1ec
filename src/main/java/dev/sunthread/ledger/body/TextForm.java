package dev.sunthread.ledger.body;

import java.util.regex.Pattern;

/** The forms of text in a body. None allows control characters or text that Unicode does not define. */
public enum TextForm {
    /** A serial, lot number or other mark: 1 to 64 visible characters, single spaces inside allowed; case counts. */
    CODE("[\\p{L}\\p{N}\\p{P}\\p{S}]+( [\\p{L}\\p{N}\\p{P}\\p{S}]+)*", 64, "1 to 64 visible characters"),
    /** The id of an envelope. */
    ID("[A-Za-z0-9][A-Za-z0-9._:-]*", 100, "1 to 100 of A-Z a-z 0-9 . _ : - starting with a letter or digit"),
    /** A name or short text on one line. */
    NAME("\\S(.*\\S)?", 200, "1 to 200 characters without spaces at the ends"),
    /** A remark of a person. */
    NOTE("\\S(.*\\S)?", 2000, "1 to 2000 characters without spaces at the ends"),
    /** A SHA-256 in hexadecimal. */
    SHA256("[0-9a-f]{64}", 64, "64 digits 0-9 and a-f"),
    /** Bytes in base64 (RFC 4648 section 4), at most a mebibyte of them. */
    BASE64("[A-Za-z0-9+/]+={0,2}", 1_398_104, "base64 of 1 to 1048576 bytes, padded and without line ends"),
    /** Text as it came, control characters and all. */
    RAW("(?s).*", 1_048_576, "at most 1048576 characters of any kind that Unicode allows");

    private final Pattern pattern;
    private final int longest;
    private final String described;

    TextForm(String pattern, int longest, String described) {
        this.pattern = Pattern.compile(pattern);
        this.longest = longest;
        this.described = described;
    }

    /** Whether the text has this form. */
    public boolean fits(String text) {
        return text.length() <= longest
                && text.codePoints().allMatch(this::isAllowed)
                && pattern.matcher(text).matches();
    }

    /** The form in words, for references and remedies. */
    public String described() {
        return described;
    }

    private boolean isAllowed(int character) {
        int type = Character.getType(character);
        return type != Character.SURROGATE
                && (this == RAW || type != Character.CONTROL && type != Character.UNASSIGNED);
    }
}
