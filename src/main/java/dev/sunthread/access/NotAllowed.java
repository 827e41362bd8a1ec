package dev.sunthread.access;

import org.jspecify.annotations.Nullable;
import org.springframework.security.access.AccessDeniedException;

/** Says that the caller lacks a right; the answer tells which, and whom to ask. */
public class NotAllowed extends AccessDeniedException {

    private final @Nullable Right right;
    private final transient @Nullable Caller caller;

    /**
     * @param right what is lacking; nothing if nobody at all may do it
     * @param caller who asked; nothing if nobody is signed in
     */
    public NotAllowed(@Nullable Right right, @Nullable Caller caller) {
        super(right == null ? "Nobody may do this" : "This needs the right " + right.word());
        this.right = right;
        this.caller = caller;
    }

    public @Nullable Right right() {
        return right;
    }

    public @Nullable Caller caller() {
        return caller;
    }
}
