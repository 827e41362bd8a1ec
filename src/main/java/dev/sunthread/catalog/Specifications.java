package dev.sunthread.catalog;

import dev.sunthread.catalog.specification.SpecificationTerms;
import dev.sunthread.ledger.Remembered;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** What released revisions of specifications state for computation. */
@Component
public class Specifications extends TermsHistory<SpecificationTerms> {

    Specifications(Remembered remembered, ApplicationEventPublisher events, JdbcClient jdbc) {
        super("specification", SpecificationTerms.class, remembered, events, jdbc);
    }
}
