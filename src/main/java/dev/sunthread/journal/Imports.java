package dev.sunthread.journal;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.dao.DataAccessException;
import org.springframework.dao.TransientDataAccessException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionException;
import org.springframework.transaction.UnexpectedRollbackException;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Takes journals in, of any size in constant memory: batches in a transaction each, a savepoint for every line. What is
 * reported is committed; a journal that broke off can be sent again whole.
 */
@Service
public class Imports {

    private static final Logger LOG = LoggerFactory.getLogger(Imports.class);
    private static final int MOST_ATTEMPTS = 10;

    private final LineTaker taker;
    private final TransactionTemplate transaction;

    Imports(LineTaker taker, PlatformTransactionManager transactions) {
        this.taker = taker;
        this.transaction = new TransactionTemplate(transactions);
    }

    /** Takes every line of the stream in and reports each once it is committed. */
    public ImportSummary run(InputStream journal, Sender sender, Consumer<LineOutcome> report) throws IOException {
        return run(journal, sender, false, report);
    }

    /**
     * The same, of a file that goes on behind any number of lines in a row that can't be read, or stops and asks there.
     * Where it stops is in the summary; what was reported before is recorded.
     */
    public ImportSummary run(InputStream journal, Sender sender, boolean goesOn, Consumer<LineOutcome> report)
            throws IOException {
        LineReading lines = new LineReading(journal, sender, goesOn);
        ImportSummary.Counting counting = new ImportSummary.Counting();
        int taken = 0;
        try {
            for (List<ReadLine> batch = lines.next(); !batch.isEmpty(); batch = lines.next()) {
                for (LineOutcome outcome : take(batch, sender)) {
                    counting.count(outcome);
                    report.accept(outcome);
                }
                taken = lines.last();
            }
        } catch (DataAccessException | TransactionException e) {
            if (!StoreFault.isNoRoom(e)) {
                throw e;
            }
            LOG.warn("An import stops behind line {}", taken, e);
            return counting.summary(ImportStop.of(taken, StoreFault.noRoom(e)));
        }
        return counting.summary(lines.stop());
    }

    /** Takes one line in. */
    public Optional<LineOutcome> takeLine(String line, Sender sender) throws IOException {
        byte[] bytes = line.replace("\r", " ").replace("\n", " ").getBytes(StandardCharsets.UTF_8);
        List<ReadLine> lines = new LineReading(new ByteArrayInputStream(bytes), sender, true).next();
        return lines.isEmpty() ? Optional.empty() : take(lines, sender).stream().findFirst();
    }

    private List<LineOutcome> take(List<ReadLine> batch, Sender sender) {
        try {
            return transaction.execute(status -> taker.take(batch, sender));
        } catch (TransientDataAccessException | UnexpectedRollbackException e) {
            // another writer stood in the way of the batch; alone, each line needs few locks and for a short time
            LOG.info(
                    "Taking lines {} and following one by one: {}",
                    batch.get(0).raw().number(),
                    e.getMessage());
            List<LineOutcome> outcomes = new ArrayList<>();
            batch.forEach(line -> outcomes.addAll(takeAlone(line, sender)));
            return outcomes;
        }
    }

    private List<LineOutcome> takeAlone(ReadLine line, Sender sender) {
        for (int attempt = 1; ; attempt++) {
            try {
                return transaction.execute(status -> taker.take(List.of(line), sender));
            } catch (TransientDataAccessException | UnexpectedRollbackException e) {
                if (attempt == MOST_ATTEMPTS) {
                    throw e;
                }
            }
        }
    }
}
