package dev.sunthread.simulator.told;

import dev.sunthread.simulator.world.Happening;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A record while it is being written, and what befalls it. */
final class Draft {

    /** What became of it. */
    enum Fate {
        RECORDED,
        LOST,
        TAKEN_BACK,
        UNREADABLE
    }

    final Happening happening;
    final String id;
    final String kind;
    final Map<String, Object> body;

    /** The station whose clock tells its times; absent if none is named. */
    final @Nullable String station;

    Fate fate = Fate.RECORDED;
    boolean late;
    boolean doubled;

    /** It shows that something else is missing, so nothing may befall it. */
    boolean needed;

    /** What it scanned is named by nothing else that stays, so its scans stay. */
    boolean keepsScans;

    Draft(Happening happening, String id, String kind, Map<String, Object> body, @Nullable String station) {
        this.happening = happening;
        this.id = id;
        this.kind = kind;
        this.body = body;
        this.station = station;
    }

    boolean isRecorded() {
        return fate == Fate.RECORDED;
    }
}
