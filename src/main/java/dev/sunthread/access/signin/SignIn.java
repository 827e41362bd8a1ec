package dev.sunthread.access.signin;

import dev.sunthread.access.Caller.Means;
import java.io.Serializable;
import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;

/**
 * What a session keeps of a sign-in. Roles and rights are not in it: they are read anew with every request, so that
 * whatever an administrator changes holds at once.
 *
 * @param mark the person's
 * @param station that of the device, if it was by badge
 */
record SignIn(
        String mark,
        Means means,
        OffsetDateTime at,
        @Nullable String station) implements Serializable {}
