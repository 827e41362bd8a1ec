package dev.sunthread.access;

import dev.sunthread.kernel.Recorder;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.stereotype.Component;

/** Who the current request comes from; templates know it as {@code @callers}. */
@Component
public class Callers implements Recorder {

    /** Who calls; empty outside of requests and before signing in. */
    public Optional<Caller> current() {
        Authentication authentication = SecurityContextHolder.getContext().getAuthentication();
        return authentication != null && authentication.getPrincipal() instanceof Caller caller
                ? Optional.of(caller)
                : Optional.empty();
    }

    /** Who calls. @throws NotAllowed if nobody is signed in */
    public Caller signedIn() {
        return current().orElseThrow(() -> new NotAllowed(Right.OWN_ACCOUNT, null));
    }

    /** Whether the caller may do what this word of {@link Right} says, such as {@code judge}; for templates. */
    public boolean may(String right) {
        return current()
                .filter(caller ->
                        caller.rights().stream().anyMatch(one -> one.word().equals(right)))
                .isPresent();
    }

    /** The roles that may do what this word of {@link Right} says; for templates that tell others whom to ask. */
    public Set<Role> whoMay(String right) {
        return Arrays.stream(Right.values())
                .filter(one -> one.word().equals(right))
                .findFirst()
                .orElseThrow()
                .roles();
    }

    /** Makes sure of a right. @throws NotAllowed if the caller does not have it */
    public void require(Right right) {
        if (current().filter(caller -> caller.may(right)).isEmpty()) {
            throw new NotAllowed(right, current().orElse(null));
        }
    }

    @Override
    public @Nullable String mark() {
        return current().map(Caller::mark).orElse(null);
    }
}
