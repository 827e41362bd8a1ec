package dev.sunthread.genealogy.scope;

import dev.sunthread.genealogy.Root;
import dev.sunthread.genealogy.Scope;
import dev.sunthread.genealogy.Scopes;
import dev.sunthread.genealogy.walk.EdgeSource;
import dev.sunthread.genealogy.walk.Starts;
import dev.sunthread.genealogy.walk.Suspect;
import dev.sunthread.kernel.Refused;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Finds what the root of a question stands for. */
@Component
public class Suspects {

    private final JdbcClient jdbc;
    private final JudgedRuns judged;

    Suspects(JdbcClient jdbc, JudgedRuns judged) {
        this.jdbc = jdbc;
        this.judged = judged;
    }

    /** @throws Refused if what is named was never recorded, or a scope has nothing in it */
    public FoundSuspects of(Root root, long cutoff, EdgeSource edges, Starts starts) {
        Joinings joinings = new Joinings();
        ScopeHistory history = new ScopeHistory(jdbc, cutoff, judged);
        List<Suspect> suspects = new Scopes(history, edges, starts, joinings).resolve(scope(root));
        if (suspects.isEmpty()) {
            throw joinings.nothing();
        }
        return new FoundSuspects(suspects, joinings.words());
    }

    private static Scope scope(Root root) {
        if (root instanceof Root.OfLot lot) {
            return new Scope.Lot(lot.number());
        }
        if (root instanceof Root.OfSupplierLot supplierLot) {
            return new Scope.SupplierLot(supplierLot.text());
        }
        if (root instanceof Root.OfUnit unit) {
            return new Scope.Units(
                    List.of(new Scope.UnitName(
                            unit.id().item(), unit.id().serial(), unit.id().issuer())),
                    null);
        }
        return ((Root.OfScope) root).scope();
    }
}
