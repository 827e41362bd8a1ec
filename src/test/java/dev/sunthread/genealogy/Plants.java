package dev.sunthread.genealogy;

import dev.sunthread.testing.Plant;

/** The items that all random plants share. */
final class Plants {

    private Plants() {}

    static void releaseItems(Plant plant) {
        plant.item("ADH", "lot", null, "g");
        plant.item("PRI", "lot", null, "g");
        plant.item("CELL", "lot", null, "pcs");
        plant.item("RCV", "serial", "receiver", "pcs");
        plant.item("WALL", "serial", "wall", "pcs");
        plant.item("MOD", "serial", "module", "pcs");
    }
}
