package dev.sunthread.web.lot;

import dev.sunthread.holds.OpenHold;
import dev.sunthread.inbox.OpenFinding;
import java.util.List;

/**
 * Everything the page of a lot shows, at one cut-off.
 *
 * @param uses how many times a step recorded it with its label, of which the newest are listed
 * @param parts how many times a part of it was put into a unit, of which the newest are listed
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
        long uses,
        List<UsedIn> latestUses,
        long parts,
        List<UsedIn> latestParts) {}
