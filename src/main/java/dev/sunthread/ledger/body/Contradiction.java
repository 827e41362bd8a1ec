package dev.sunthread.ledger.body;

/** Thrown by the constructor of a body whose fields are each right but can't stand together. */
public class Contradiction extends RuntimeException {

    private final String field;
    private final String remedy;

    public Contradiction(String field, String reason, String remedy) {
        super(reason);
        this.field = field;
        this.remedy = remedy;
    }

    FieldProblem at(String path) {
        return new FieldProblem(path + "." + field, String.valueOf(getMessage()), remedy);
    }
}
