package dev.sunthread.web.inbox;

import dev.sunthread.inbox.Lines;
import dev.sunthread.inbox.OpenLine;
import dev.sunthread.ledger.Sealer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.UUID;
import org.springframework.stereotype.Service;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** Settles every line of a file that waits, each by an entry of its own; what broke off can be sent again. */
@Service
class FileSettlement {

    private static final int AT_ONCE = 200;

    private final Lines lines;
    private final Sealer sealer;
    private final Settlements settlements;
    private final TransactionTemplate transaction;

    FileSettlement(Lines lines, Sealer sealer, Settlements settlements, PlatformTransactionManager transactions) {
        this.lines = lines;
        this.sealer = sealer;
        this.settlements = settlements;
        this.transaction = new TransactionTemplate(transactions);
    }

    /** Settles what a person saw open and is open still; gives how many lines that were. */
    int settle(FileForm form) {
        int settled = 0;
        for (List<OpenLine> next = next(form); !next.isEmpty(); next = next(form)) {
            List<OpenLine> batch = next;
            transaction.executeWithoutResult(status -> batch.forEach(line -> settle(form, line)));
            settled += batch.size();
        }
        return settled;
    }

    private List<OpenLine> next(FileForm form) {
        return lines.ofFile(form.file(), form.cutoff(), sealer.seal(), 0, AT_ONCE);
    }

    private void settle(FileForm form, OpenLine line) {
        byte[] one = (form.id() + " " + line.entry()).getBytes(StandardCharsets.UTF_8);
        settlements.settleLine(line.entry(), null, "settled-" + UUID.nameUUIDFromBytes(one), form.reason());
    }
}
