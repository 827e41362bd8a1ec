package dev.sunthread.ledger;

import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.TextForm;
import org.springframework.stereotype.Component;

/** Says that an earlier entry tells nothing true. */
@Component
class VoidKind implements Kind<VoidKind.Body> {

    record Body(
            @Field(value = "The id of the envelope that is taken back", text = TextForm.ID)
            String entry,

            @Field(value = "Why it is taken back", text = TextForm.NOTE)
            String why) {}

    private final Withdrawal withdrawal;

    VoidKind(Withdrawal withdrawal) {
        this.withdrawal = withdrawal;
    }

    @Override
    public String name() {
        return "void";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "An earlier entry tells nothing true; it stays in the ledger and is no longer believed.";
    }

    @Override
    public void record(Fact<Body> fact) {
        withdrawal.withdraw(fact, fact.body().entry(), fact.body().why());
    }

    @Override
    public boolean withdrawable() {
        return false;
    }
}
