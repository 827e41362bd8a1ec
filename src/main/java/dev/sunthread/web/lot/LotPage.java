package dev.sunthread.web.lot;

import dev.sunthread.holds.OpenHold;
import dev.sunthread.inbox.OpenFinding;
import dev.sunthread.web.Paged;
import java.util.List;

/**
 * Everything the page of a lot shows, at one cut-off.
 *
 * @param picture its balance as a picture
 * @param uses a page of the steps that recorded it with its label, the newest first
 * @param parts a page of the times a part of it was put into a unit, the newest first
 */
public record LotPage(
        String number,
        LotStock stock,
        List<Made> madeFrom,
        List<Made> wentInto,
        List<Received> receipts,
        List<OpenHold> holds,
        List<OpenFinding> findings,
        List<Charged> charges,
        BalancePicture picture,
        Paged<UsedIn> uses,
        Paged<UsedIn> parts) {}
