package dev.sunthread.electrical.terms;

import dev.sunthread.electrical.curve.Curve;
import dev.sunthread.electrical.curve.DarkSpans;
import dev.sunthread.kernel.verdict.Criterion;
import dev.sunthread.kernel.verdict.Limits;
import dev.sunthread.kernel.verdict.Phrase;
import dev.sunthread.kernel.verdict.Unusable;
import java.util.List;
import java.util.Optional;

/**
 * What a curve without light must show.
 *
 * @param sweep the name of the sweep
 * @param current the forward current in amperes at which the forward voltage is taken
 * @param points how many points give each slope
 */
public record DarkTerms(String sweep, double current, int points, List<Limited> limits) {

    /** Common practice. */
    public static final int USUAL_POINTS = 5;

    /** A quantity with its limits. */
    public record Limited(DarkQuantity quantity, Limits limits) {}

    List<Criterion> judge(Tested test, List<Phrase> remarks) {
        Optional<Swept> swept = test.swept(sweep);
        if (swept.isEmpty()) {
            return missing(Phrase.of("judged.sweep.none", sweep));
        }
        try {
            Curve read = Curve.dark(swept.get().volts(), swept.get().amperes());
            remarks.addAll(read.remarks());
            List<DarkSpans> seen = test.error().corrected(read).stream()
                    .map(corrected -> new DarkSpans(corrected, current))
                    .toList();
            seen.forEach(DarkSpans::checkPossible);
            return limits.stream()
                    .map(limited -> limited.quantity().ofSweep(sweep, limited.limits(), seen))
                    .toList();
        } catch (Unusable unusable) {
            return missing(Phrase.of("judged.sweep.unusable", sweep, unusable.why()));
        }
    }

    private List<Criterion> missing(Phrase why) {
        return limits.stream()
                .map(limited -> limited.quantity().missing(limited.limits(), why))
                .toList();
    }
}
