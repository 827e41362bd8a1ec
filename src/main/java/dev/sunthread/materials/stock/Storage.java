package dev.sunthread.materials.stock;

/** How warm a container is kept. */
public enum Storage {
    FROZEN,
    COOLED,
    ROOM
}
