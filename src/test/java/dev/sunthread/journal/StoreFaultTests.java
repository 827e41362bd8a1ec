package dev.sunthread.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.sql.BatchUpdateException;
import java.sql.SQLException;
import org.junit.jupiter.api.Test;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.jdbc.UncategorizedSQLException;

/** What the database does not store is told by what the database says, or by what is the matter with it. */
class StoreFaultTests {

    // SQLSTATE of a full disk: PostgreSQL documentation, Appendix A, class 53
    private static final SQLException FULL =
            new SQLException("ERROR: could not extend file: No space left on device", "53100");

    @Test
    void saysThatTheDiskIsFull() {
        var fault = new UncategorizedSQLException("batch", null, hidden(FULL));
        assertThat(StoreFault.isNoRoom(fault)).isTrue();
        assertThat(StoreFault.noRoom(fault).reason()).isEqualTo("The disk of the database is full");
    }

    @Test
    void saysWhatTheDatabaseSaysAlsoIfABatchHidesIt() {
        var fault = new DataIntegrityViolationException(
                "insert", hidden(new SQLException("ERROR: value too long\n  Detail: more", "22001")));
        assertThat(StoreFault.isNoRoom(fault)).isFalse();
        assertThat(StoreFault.words(fault)).isEqualTo("the database says value too long");
        assertThat(StoreFault.words(new DataIntegrityViolationException("x")))
                .isEqualTo("the database does not take it");
    }

    private static SQLException hidden(SQLException said) {
        BatchUpdateException batch = new BatchUpdateException(null, null, 0, new int[0], null);
        batch.setNextException(said);
        return batch;
    }
}
