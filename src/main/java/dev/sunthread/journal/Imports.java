package dev.sunthread.journal;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.dao.TransientDataAccessException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.UnexpectedRollbackException;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Takes journals in, of any size in constant memory: batches in a transaction each, a savepoint for every line. What is
 * reported is committed; a journal that broke off can be sent again whole.
 */
@Service
public class Imports {

    private static final Logger LOG = LoggerFactory.getLogger(Imports.class);
    private static final int BATCH = 200;
    private static final int MOST_ATTEMPTS = 10;
    private static final int BATCH_BYTES = 16 * 1024 * 1024;

    private final LineTaker taker;
    private final TransactionTemplate transaction;

    Imports(LineTaker taker, PlatformTransactionManager transactions) {
        this.taker = taker;
        this.transaction = new TransactionTemplate(transactions);
    }

    /** Takes every line of the stream in and reports each once it is committed. */
    public ImportSummary run(InputStream journal, Sender sender, Consumer<LineOutcome> report) throws IOException {
        LineSplitter lines = new LineSplitter(journal);
        ImportSummary.Counting counting = new ImportSummary.Counting();
        List<RawLine> batch = nextBatch(lines);
        while (!batch.isEmpty()) {
            for (LineOutcome outcome : take(batch, sender)) {
                counting.count(outcome);
                report.accept(outcome);
            }
            batch = nextBatch(lines);
        }
        return counting.summary();
    }

    /** Takes one line in. */
    public Optional<LineOutcome> takeLine(String line, Sender sender) throws IOException {
        List<LineOutcome> outcomes = new ArrayList<>();
        byte[] bytes = line.replace("\r", " ").replace("\n", " ").getBytes(java.nio.charset.StandardCharsets.UTF_8);
        run(new java.io.ByteArrayInputStream(bytes), sender, outcomes::add);
        return outcomes.stream().findFirst();
    }

    private static List<RawLine> nextBatch(LineSplitter lines) throws IOException {
        List<RawLine> batch = new ArrayList<>(BATCH);
        long bytes = 0;
        @Nullable RawLine line = null;
        while (batch.size() < BATCH && bytes < BATCH_BYTES && (line = lines.next()) != null) {
            if (!line.isBlank()) {
                batch.add(line);
                bytes += line.kept().length;
            }
        }
        return batch;
    }

    private List<LineOutcome> take(List<RawLine> batch, Sender sender) {
        try {
            return transaction.execute(status -> taker.take(batch, sender));
        } catch (TransientDataAccessException | UnexpectedRollbackException e) {
            // another writer stood in the way of the batch; alone, each line needs few locks and for a short time
            LOG.info(
                    "Taking lines {} and following one by one: {}", batch.get(0).number(), e.getMessage());
            List<LineOutcome> outcomes = new ArrayList<>();
            batch.forEach(line -> outcomes.addAll(takeAlone(line, sender)));
            return outcomes;
        }
    }

    private List<LineOutcome> takeAlone(RawLine line, Sender sender) {
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
