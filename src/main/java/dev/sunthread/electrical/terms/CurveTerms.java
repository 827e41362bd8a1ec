package dev.sunthread.electrical.terms;

import dev.sunthread.electrical.curve.Curve;
import dev.sunthread.electrical.curve.CurveMethod;
import dev.sunthread.electrical.curve.CurveNumbers;
import dev.sunthread.electrical.curve.CurveSpans;
import dev.sunthread.electrical.curve.Possible;
import dev.sunthread.electrical.translate.Translation;
import dev.sunthread.kernel.verdict.Criterion;
import dev.sunthread.kernel.verdict.Digit;
import dev.sunthread.kernel.verdict.Limits;
import dev.sunthread.kernel.verdict.Phrase;
import dev.sunthread.kernel.verdict.Unusable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a curve under light must show.
 *
 * @param sweep the name of the sweep
 * @param translation to the conditions that the limits are stated for; absent if as measured
 * @param limits each quantity with its limits
 */
public record CurveTerms(
        String sweep, CurveMethod method, @Nullable Translation translation, List<Limited> limits) {

    /** A quantity with its limits. */
    public record Limited(CurveQuantity quantity, Limits limits) {}

    private static final double OUT_OF_SCALE = 100;

    List<Criterion> judge(Tested test, List<Phrase> remarks) {
        Optional<Swept> swept = test.swept(sweep);
        if (swept.isEmpty()) {
            return missing(Phrase.of("judged.sweep.none", sweep));
        }
        try {
            return judge(swept.get(), test.error(), remarks);
        } catch (Unusable unusable) {
            return missing(Phrase.of("judged.sweep.unusable", sweep, unusable.why()));
        }
    }

    private List<Criterion> judge(Swept swept, RigError error, List<Phrase> remarks) {
        List<Seen> seen = new ArrayList<>();
        for (Curve corrected : error.corrected(Curve.of(swept.volts(), swept.amperes()))) {
            Seen moved = seen(corrected, swept);
            Possible.check(moved.curve(), moved.numbers());
            seen.add(moved);
        }
        remarks.add(how());
        remarks.addAll(seen.get(0).numbers().remarks());
        List<Criterion> criteria = new ArrayList<>();
        limits.forEach(limited -> criteria.add(limited.quantity().ofSweep(sweep, limited.limits(), seen)));
        scale(seen.get(0)).ifPresent(criteria::add);
        return criteria;
    }

    /** By what method, and translated by which procedure of which edition. */
    private Phrase how() {
        return translation == null
                ? Phrase.of("judged.sweep.as-measured", sweep, method.words())
                : Phrase.of(
                        "judged.sweep.translated",
                        sweep,
                        translation.words(),
                        Digit.plain(translation.to().irradiance()),
                        Digit.plain(translation.to().celsius()),
                        method.words());
    }

    /** A curve under the conditions that limits are stated for, with what it says. */
    public record Seen(Curve curve, CurveNumbers numbers) {

        CurveSpans spans() {
            return new CurveSpans(curve);
        }
    }

    /** @throws Unusable if nothing can be made of it, or it can't be translated */
    public Seen seen(Swept swept) {
        return seen(Curve.of(swept.volts(), swept.amperes()), swept);
    }

    private Seen seen(Curve measured, Swept swept) {
        CurveNumbers raw = CurveNumbers.of(measured, method);
        if (translation == null) {
            return new Seen(measured, raw);
        }
        if (swept.conditions() == null) {
            throw new Unusable(Phrase.of("judged.sweep.no-conditions"), Phrase.of("judged.sweep.no-conditions.remedy"));
        }
        Curve moved = new Moved(translation, swept.conditions()).of(measured, raw);
        return new Seen(moved, CurveNumbers.of(moved, method));
    }

    /** Says so if the current is so far from its limits that it must be in another unit. */
    private Optional<Criterion> scale(Seen seen) {
        double current;
        try {
            current = seen.numbers().shortCircuit();
        } catch (Unusable unknown) {
            return Optional.empty();
        }
        return limits.stream()
                .filter(limited -> limited.quantity() == CurveQuantity.SHORT_CIRCUIT_CURRENT)
                .map(Limited::limits)
                .filter(limit -> isOff(limit.least(), current) || isOff(limit.most(), current))
                .findFirst()
                .map(limit -> Criterion.flaw(
                        Phrase.of("judged.sweep.other-unit"),
                        Phrase.of(
                                isAbove(limit, current)
                                        ? "judged.sweep.other-unit.above"
                                        : "judged.sweep.other-unit.below")));
    }

    private static boolean isAbove(Limits limit, double current) {
        Double stated = limit.least() == null ? limit.most() : limit.least();
        return stated != null && current > stated;
    }

    private static boolean isOff(@Nullable Double limit, double current) {
        return limit != null && limit > 0 && (current > OUT_OF_SCALE * limit || current * OUT_OF_SCALE < limit);
    }

    private List<Criterion> missing(Phrase why) {
        return limits.stream()
                .map(limited -> limited.quantity().missing(limited.limits(), why))
                .toList();
    }
}
