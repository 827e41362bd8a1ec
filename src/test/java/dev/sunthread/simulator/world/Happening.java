package dev.sunthread.simulator.world;

/** Something that truly happens, at an instant in microseconds since 1970-01-01T00:00Z. */
public interface Happening {

    long at();

    void happenIn(World world);
}
