package dev.sunthread.electrical.terms;

import dev.sunthread.kernel.verdict.Criterion;
import dev.sunthread.kernel.verdict.Judgement;
import dev.sunthread.kernel.verdict.Phrase;
import java.util.ArrayList;
import java.util.List;

/** Everything that a revision of a specification demands. */
public record SpecificationTerms(List<CurveTerms> curves, List<DarkTerms> dark, List<SafetyTerms> safety) {

    /** Judges a test; one without raw data proves nothing. */
    public Judgement judge(Tested test) {
        if (test.sweeps().isEmpty() && test.readings().isEmpty()) {
            return Judgement.notProven(Phrase.of("judged.no-raw-data"));
        }
        List<Criterion> criteria = new ArrayList<>();
        List<Phrase> remarks = new ArrayList<>();
        curves.forEach(terms -> criteria.addAll(terms.judge(test, remarks)));
        dark.forEach(terms -> criteria.addAll(terms.judge(test, remarks)));
        safety.forEach(terms -> criteria.add(terms.judge(test.readings())));
        return Judgement.of(criteria, remarks);
    }
}
