package dev.sunthread.paper;

import dev.sunthread.kernel.Refused;
import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.Envelope;
import dev.sunthread.ledger.EnvelopeHead;
import dev.sunthread.ledger.Manner;
import dev.sunthread.paper.form.Form;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import org.springframework.stereotype.Service;

/** Prints sheets of blank records and voids those that nobody will enter, each through the door. */
@Service
public class Sheets {

    private final Door door;
    private final Clock clock;
    private final SecureRandom random = new SecureRandom();

    Sheets(Door door, Clock clock) {
        this.door = door;
        this.clock = clock;
    }

    /**
     * Records that a sheet is printed, and gives its code.
     *
     * @throws Refused if its station, or the operation of its form, is not released
     */
    public String print(Form form, int records, String actor) {
        String code = RecordId.sheetCode(random);
        List<String> ids =
                RecordId.first(code, records).stream().map(RecordId::text).toList();
        var body = new FormSheetKind.Body(form.kind(), form.station(), form.item(), form.operation(), ids);
        door.accept(Envelope.of(head("paper-sheet-" + code, "form-sheet", actor), body), Manner.DO);
        return code;
    }

    /**
     * Says that records will not be entered.
     *
     * @param id of the envelope, so that sending twice says it once
     * @throws Refused if one was entered before
     */
    public void giveUp(String id, List<String> records, Fate fate, String why, String actor) {
        var body = new FormVoidKind.Body(records, fate, why);
        door.accept(Envelope.of(head(id, "form-void", actor), body), Manner.DO);
    }

    private EnvelopeHead head(String id, String kind, String actor) {
        return new EnvelopeHead(id, kind, 1, OffsetDateTime.now(clock), actor, "page");
    }
}
