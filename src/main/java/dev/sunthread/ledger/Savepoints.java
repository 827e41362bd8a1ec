package dev.sunthread.ledger;

import org.springframework.boot.transaction.autoconfigure.TransactionManagerCustomizer;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.orm.jpa.JpaTransactionManager;

/** Lets a refused envelope be taken back alone, within a transaction that goes on. */
@Configuration
class Savepoints {

    @Bean
    TransactionManagerCustomizer<JpaTransactionManager> nestedTransactionsAllowed() {
        return manager -> manager.setNestedTransactionAllowed(true);
    }
}
