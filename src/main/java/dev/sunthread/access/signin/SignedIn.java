package dev.sunthread.access.signin;

import dev.sunthread.access.Caller;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.security.authentication.AbstractAuthenticationToken;
import org.springframework.security.core.authority.AuthorityUtils;

/** A caller as Spring Security keeps it during a request. */
public final class SignedIn extends AbstractAuthenticationToken {

    private final transient Caller caller;
    private final @Nullable SignIn signIn;

    SignedIn(Caller caller, @Nullable SignIn signIn) {
        super(AuthorityUtils.NO_AUTHORITIES);
        this.caller = caller;
        this.signIn = signIn;
        setAuthenticated(true);
    }

    /** A caller that is in no session, such as a machine. */
    public SignedIn(Caller caller) {
        this(caller, null);
    }

    /** What a session is to keep; nothing for a machine. */
    @Nullable
    SignIn signIn() {
        return signIn;
    }

    @Override
    public String getName() {
        return caller.mark();
    }

    @Override
    public Caller getPrincipal() {
        return caller;
    }

    @Override
    public @Nullable Object getCredentials() {
        return null;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof SignedIn that && caller.equals(that.caller) && Objects.equals(signIn, that.signIn);
    }

    @Override
    public int hashCode() {
        return caller.mark().hashCode();
    }
}
