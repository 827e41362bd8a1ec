package dev.sunthread.database;

/** The embedded server cannot use its directory; says what is wrong with it and what the operator can do. */
class DirectoryRefused extends IllegalStateException {

    private final String reason;
    private final String remedy;

    DirectoryRefused(String reason, String remedy) {
        super(reason + " " + remedy);
        this.reason = reason;
        this.remedy = remedy;
    }

    String reason() {
        return reason;
    }

    String remedy() {
        return remedy;
    }
}
