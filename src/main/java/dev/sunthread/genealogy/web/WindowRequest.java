package dev.sunthread.genealogy.web;

import dev.sunthread.genealogy.ProposedWindow;
import dev.sunthread.genealogy.Scope;
import dev.sunthread.genealogy.WindowProposals;
import dev.sunthread.ledger.body.Unreadable;
import io.swagger.v3.oas.annotations.Parameter;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;

/** What a window is asked for: a piece of equipment, or a position of a station. */
record WindowRequest(
        @Parameter(description = "An oven, a lamp or a rig") @Nullable
        String equipment,

        @Parameter(description = "A station; with position, fault and noticed") @Nullable
        String station,

        @Parameter(description = "A position of the station") @Nullable
        String position,

        @Parameter(description = "The fault that was noticed") @Nullable
        String fault,

        @Parameter(description = "When it was noticed; without offset in the plant's zone") @Nullable
        String noticed) {

    static final WindowRequest NONE = new WindowRequest(null, null, null, null, null);

    boolean isAsked() {
        return given(equipment) || given(station);
    }

    ProposedWindow proposed(WindowProposals windows, ZoneId zone) {
        OffsetDateTime at = TimeText.read(noticed, "noticed", zone);
        if (equipment != null && given(equipment)) {
            return windows.ofEquipment(equipment, given(fault) ? fault : null, at);
        }
        return windows.ofPosition(
                needed(station, "station"),
                needed(position, "position"),
                needed(fault, "fault"),
                at == null ? missing("noticed") : at);
    }

    /** The scope that the window stands for. */
    Scope scope(Scope.Window window) {
        return equipment != null && given(equipment)
                ? new Scope.Equipment(equipment, window)
                : new Scope.Position(needed(station, "station"), needed(position, "position"), window);
    }

    private static String needed(@Nullable String text, String field) {
        return text == null || text.isBlank() ? missing(field) : text;
    }

    private static <T> T missing(String field) {
        throw Unreadable.at(field, "is missing", "Give equipment, or station, position, fault and noticed");
    }

    private static boolean given(@Nullable String text) {
        return text != null && !text.isBlank();
    }
}
