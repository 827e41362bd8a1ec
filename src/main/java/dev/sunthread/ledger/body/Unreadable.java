package dev.sunthread.ledger.body;

import dev.sunthread.kernel.Refused;
import java.util.List;
import java.util.stream.Collectors;

/** Says that a line or body can't be read or identified, with every problem found in it. */
public class Unreadable extends Refused {

    private final transient List<FieldProblem> problems;

    public Unreadable(List<FieldProblem> problems) {
        super(
                problems.stream().map(p -> p.field() + ": " + p.reason()).collect(Collectors.joining("; ")),
                problems.stream().map(FieldProblem::remedy).distinct().collect(Collectors.joining("; ")));
        this.problems = List.copyOf(problems);
    }

    public static Unreadable at(String field, String reason, String remedy) {
        return new Unreadable(List.of(new FieldProblem(field, reason, remedy)));
    }

    /** The same problems of a body that stands in another one. */
    public Unreadable within(String path) {
        return new Unreadable(problems.stream()
                .map(problem -> new FieldProblem(path + "." + problem.field(), problem.reason(), problem.remedy()))
                .toList());
    }

    /** All problems found, in the order of the fields. */
    public List<FieldProblem> problems() {
        return problems;
    }
}
