package dev.sunthread.station;

import dev.sunthread.ledger.Door;
import dev.sunthread.station.label.Label;
import dev.sunthread.station.work.Recording;
import dev.sunthread.station.work.Work;
import dev.sunthread.station.work.Works;
import java.util.List;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Service;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Takes scans that the server answered with an error over and over: each goes to the inbox as it was read, so that none is
 * lost and what was scanned behind it can go on.
 */
@Service
public class UnreadScans {

    private static final Logger LOG = LoggerFactory.getLogger(UnreadScans.class);

    private final TakenScans scans;
    private final Works works;
    private final ScanTimes times;
    private final Door door;
    private final TransactionTemplate transaction;

    UnreadScans(TakenScans scans, Works works, ScanTimes times, Door door, PlatformTransactionManager transactions) {
        this.scans = scans;
        this.works = works;
        this.times = times;
        this.door = door;
        this.transaction = new TransactionTemplate(transactions);
    }

    /** Keeps a scan, with what is in hand as far as that can be read. One that was taken meanwhile stays as it is. */
    public void keep(String station, String person, Scan scan) {
        Work work = inHand(station, person);
        transaction.executeWithoutResult(status -> {
            if (scans.verdict(scan.id()).isEmpty()) {
                times.tell(station, scan);
                KeptScan.record(
                        new Recording(door, station, person, scan),
                        scan,
                        work,
                        List.of(new Label.Unknown(scan.text())),
                        "The server failed each time it was to take this scan",
                        "Find out what was done and record it, then settle this line; tell whoever looks after the server");
                scans.keep(
                        station,
                        person,
                        scan,
                        Verdict.noted(Say.of("unread", scan.text()), Say.of("kept.in-inbox.remedy")));
            }
        });
    }

    // what is in hand may be what the server fails at
    private Work inHand(String station, String person) {
        try {
            return works.of(station, person);
        } catch (RuntimeException e) {
            LOG.warn("What {} has in hand at {} can't be read", person, station, e);
            return Work.NOTHING;
        }
    }
}
