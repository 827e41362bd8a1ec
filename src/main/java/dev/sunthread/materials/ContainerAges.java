package dev.sunthread.materials;

import java.time.OffsetDateTime;

/** Tells how long containers were open and out of the cold; known by the part that keeps their moves. */
public interface ContainerAges {

    /** The age of a container at a time, by all that is recorded and not withdrawn. */
    ContainerAge of(long container, OffsetDateTime at);

    /** Says that something of a container is being recorded. */
    void changed(long container);
}
