package dev.sunthread.genealogy.position;

import dev.sunthread.genealogy.walk.Moment;

/** A load of a position that no record tells: the item that was drawn of it, and the uses that show it, first to last. */
public record Untold(long item, Moment at) {

    Untold with(Untold other) {
        return new Untold(
                item, new Moment(Math.min(at.early(), other.at.early()), Math.max(at.late(), other.at.late())));
    }
}
