package dev.sunthread.web.lot;

import dev.sunthread.materials.Expiry;
import dev.sunthread.materials.incoming.Attachments;
import dev.sunthread.materials.incoming.IncomingReleases;
import dev.sunthread.materials.incoming.LotStatuses;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;

/** Gathers the stock and the papers of one lot at a cut-off. */
@Service
class LotStocks {

    private final LotStatuses statuses;
    private final Expiry expiry;
    private final IncomingReleases releases;
    private final Attachments attachments;
    private final LotContents contents;
    private final Clock clock;

    LotStocks(
            LotStatuses statuses,
            Expiry expiry,
            IncomingReleases releases,
            Attachments attachments,
            LotContents contents,
            Clock clock) {
        this.statuses = statuses;
        this.expiry = expiry;
        this.releases = releases;
        this.attachments = attachments;
        this.contents = contents;
        this.clock = clock;
    }

    LotStock read(long lot, @Nullable Integer containers, long cutoff) {
        OffsetDateTime now = OffsetDateTime.now(clock);
        return new LotStock(
                statuses.of(lot, now, cutoff),
                expiry.at(lot, cutoff).orElse(null),
                releases.of(lot, cutoff),
                attachments.of(lot, cutoff),
                contents.ofContainers(lot, containers, now, cutoff),
                contents.balance(lot, cutoff));
    }

    List<HeldContent> containers(long lot, long cutoff) {
        return contents.ofEveryContainer(lot, OffsetDateTime.now(clock), cutoff);
    }
}
