package dev.sunthread.ledger;

import dev.sunthread.kernel.Recorder;
import java.time.Clock;
import java.time.OffsetDateTime;
import org.springframework.stereotype.Component;

/** Stamps what is recorded now, by whoever hands it in. */
@Component
class RecordedNow {

    private final Recorder recorder;
    private final Clock clock;

    RecordedNow(Recorder recorder, Clock clock) {
        this.recorder = recorder;
        this.clock = clock;
    }

    Recorded stamp() {
        return new Recorded(OffsetDateTime.now(clock), recorder.mark());
    }
}
