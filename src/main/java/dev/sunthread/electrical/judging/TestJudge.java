package dev.sunthread.electrical.judging;

import dev.sunthread.catalog.FoundError;
import dev.sunthread.catalog.judging.Judge;
import dev.sunthread.catalog.judging.Judged;
import dev.sunthread.catalog.specification.SpecificationTerms;
import dev.sunthread.electrical.terms.RigError;
import dev.sunthread.electrical.terms.Tested;
import dev.sunthread.kernel.verdict.Judgement;
import dev.sunthread.kernel.verdict.Phrase;
import dev.sunthread.kernel.verdict.Span;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Component;

/** Judges test runs from the points of their sweeps and from what insulation and ground testers read. */
@Component
public class TestJudge implements Judge<SpecificationTerms> {

    private final RawTests raw;

    TestJudge(RawTests raw) {
        this.raw = raw;
    }

    @Override
    public Map<Long, Judged> judge(Collection<Case> cases, SpecificationTerms stated, Errors errors) {
        Map<Long, Tested> tests = raw.of(cases.stream().map(Case::entry).toList());
        Map<Long, Judged> judged = new LinkedHashMap<>();
        cases.forEach(run -> {
            Tested test = tests.getOrDefault(run.entry(), new Tested(List.of(), List.of(), RigError.NONE));
            boolean measured = !test.sweeps().isEmpty() || !test.readings().isEmpty();
            judged.put(run.entry(), new Judged(judge(stated, test, errors.of(run)), measured));
        });
        return judged;
    }

    private static Judgement judge(SpecificationTerms stated, Tested test, List<FoundError> errors) {
        try {
            return StatedTerms.of(stated).judge(new Tested(test.sweeps(), test.readings(), error(errors)));
        } catch (IllegalArgumentException | IllegalStateException | ArithmeticException beyondNumbers) {
            return Judgement.notProven(Phrase.of("judged.specification-no-result"));
        }
    }

    /** The error of a rig by what a check found. */
    public static RigError error(List<FoundError> found) {
        return new RigError(of(found, FoundError.Quantity.CURRENT), of(found, FoundError.Quantity.VOLTAGE));
    }

    private static Span of(List<FoundError> found, FoundError.Quantity quantity) {
        return found.stream()
                .filter(error -> error.quantity() == quantity)
                .map(FoundError::span)
                .reduce(Span.exactly(0), Span::plus);
    }
}
