package dev.sunthread.web.run;

import dev.sunthread.cure.BondVerdicts;
import dev.sunthread.cure.judging.CureVerdicts;
import org.springframework.stereotype.Component;

/** What the raw data of one record of a cure say: of the run, and of single bonds in it. */
@Component
class JudgedCures {

    private final CureVerdicts verdicts;
    private final CureProfiles profiles;
    private final BondVerdicts bonds;

    JudgedCures(CureVerdicts verdicts, CureProfiles profiles, BondVerdicts bonds) {
        this.verdicts = verdicts;
        this.profiles = profiles;
        this.bonds = bonds;
    }

    CureRunPage.Judged of(CureRunPage.Recorded record, long cutoff) {
        return new CureRunPage.Judged(
                record.entry(),
                verdicts.under(record.number(), cutoff).stream()
                        .map(RunVerdict::of)
                        .toList(),
                profiles.of(record.number(), record.recipe()),
                bonds.of(record.number()).stream().map(JudgedCures::bond).toList());
    }

    private static CureRunPage.Bond bond(BondVerdicts.BondVerdict verdict) {
        return new CureRunPage.Bond(
                verdict.unit().item(),
                verdict.unit().serial(),
                verdict.unit().issuer(),
                verdict.position(),
                verdict.runs(),
                verdict.judgement().outcome().words(),
                verdict.judgement().sentence());
    }
}
