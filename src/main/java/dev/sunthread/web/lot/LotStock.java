package dev.sunthread.web.lot;

import dev.sunthread.materials.incoming.Attached;
import dev.sunthread.materials.incoming.IncomingRelease;
import dev.sunthread.materials.incoming.LotStatus;
import dev.sunthread.materials.stock.Balance;
import dev.sunthread.web.Paged;
import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the page of a lot shows of its stock and its papers.
 *
 * @param containers a page of them, those filled last first
 */
public record LotStock(
        List<LotStatus> statuses,
        @Nullable OffsetDateTime expiresAt,
        List<IncomingRelease> releases,
        List<Attached> attachments,
        Paged<HeldContent> containers,
        Balance balance) {}
