package dev.sunthread.access.web;

import dev.sunthread.access.Caller;
import dev.sunthread.access.NotAllowed;
import dev.sunthread.access.Right;
import dev.sunthread.access.Role;
import dev.sunthread.access.Words;
import java.util.Collection;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Says of a refused request what is missing and whom to ask. */
@Component
public class Refusal {

    private final Words words;

    Refusal(Words words) {
        this.words = words;
    }

    /** What is wrong, and what to do, as sentences. */
    public record Said(String reason, String remedy) {}

    Said of(NotAllowed e) {
        Right right = e.right();
        if (right == null) {
            return said("closed");
        }
        String need = words.of("right." + right.word());
        Caller caller = e.caller();
        if (caller == null) {
            return new Said(words.of("refused.nobody", need), words.of("refused.nobody.remedy"));
        }
        if (!caller.isPerson()) {
            return new Said(words.of("refused.machine", need, caller.mark()), words.of("refused.machine.remedy"));
        }
        return new Said(words.of("refused.right", need, caller.mark(), roles(caller.roles())), remedy(right, caller));
    }

    /** By badge and PIN a person can do less than by password. */
    private String remedy(Right right, Caller caller) {
        return Right.of(caller.roles()).contains(right)
                ? words.of("refused.right.password")
                : words.of("refused.right.remedy", roles(right.roles()));
    }

    Said said(String name) {
        return new Said(words.of("refused." + name), words.of("refused." + name + ".remedy"));
    }

    private String roles(@Nullable Collection<Role> roles) {
        return roles == null || roles.isEmpty()
                ? words.of("role.none")
                : roles.stream().map(role -> words.of("role." + role.word())).collect(Collectors.joining(", "));
    }
}
