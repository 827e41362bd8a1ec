package dev.sunthread.production;

import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.EarlierEntries;
import dev.sunthread.ledger.Fact;
import java.util.List;
import org.springframework.stereotype.Component;

/** Nothing is in two places, and no position holds two things: whoever comes second is told who was first. */
@Component
class TakenPlaces {

    private static final String REMEDY = "Record the removal that was missed, or void the installation that is wrong";

    private final EarlierStays stays;
    private final EarlierEntries earlier;

    TakenPlaces(EarlierStays stays, EarlierEntries earlier) {
        this.stays = stays;
        this.earlier = earlier;
    }

    /** Says who was first where a child is put in that is elsewhere then, or a position is filled that is taken. */
    void isTaken(Fact<InstallationKind.Body> fact, Children.Child child, long parent) {
        List<EarlierStays.Stay> before = stays.contradicting(fact.entry());
        TraceRef[] about = {child.ref(), TraceRef.unit(parent)};
        before.stream()
                .filter(stay -> child.unit() != null && child.unit().equals(stay.child()))
                .findFirst()
                .ifPresentOrElse(
                        elsewhere -> nothingIsInTwoPlaces(fact, elsewhere, about),
                        () -> before.stream()
                                .findFirst()
                                .ifPresent(first -> positionHoldsOneThing(fact, first, about)));
    }

    private void nothingIsInTwoPlaces(Fact<InstallationKind.Body> fact, EarlierStays.Stay elsewhere, TraceRef[] about) {
        fact.breaks(
                "nothing-is-in-two-places",
                "Unit " + fact.body().child().unit() + " is recorded as being in " + elsewhere.place()
                        + " at that time, put there " + earlier.words(elsewhere.entry(), fact.occurredAt()),
                REMEDY,
                about);
    }

    private void positionHoldsOneThing(Fact<InstallationKind.Body> fact, EarlierStays.Stay first, TraceRef[] about) {
        String position = fact.body().position() + " of " + fact.body().parent();
        fact.breaks(
                "position-holds-one-thing",
                "Position " + position + " is recorded as holding " + first.what() + " at that time, put there "
                        + earlier.words(first.entry(), fact.occurredAt()),
                REMEDY,
                about);
    }
}
