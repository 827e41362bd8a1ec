package dev.sunthread.quality;

import java.time.OffsetDateTime;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A station of which not everything done there may be recorded, so that an answer may lack what was.
 *
 * @param entry the id of the envelope that said so
 * @param since until then everything done there is recorded
 * @param page the page at the station it is about; absent if it is about the whole station
 */
public record StationBehind(
        String entry,
        String station,
        OffsetDateTime since,
        @Nullable UUID page,
        String why) {}
