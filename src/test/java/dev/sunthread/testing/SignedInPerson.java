package dev.sunthread.testing;

import dev.sunthread.access.Caller;
import dev.sunthread.access.Role;
import dev.sunthread.access.signin.SignedIn;
import java.util.Set;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.core.context.SecurityContextImpl;
import org.springframework.security.test.context.support.WithSecurityContextFactory;

/** Makes the person of {@link SignedInAs}, whose mark is {@value #MARK}. */
public class SignedInPerson implements WithSecurityContextFactory<SignedInAs> {

    public static final String MARK = "tester";

    @Override
    public SecurityContext createSecurityContext(SignedInAs as) {
        return as.value().length == 0
                ? SecurityContextHolder.createEmptyContext()
                : new SecurityContextImpl(of(as.value()));
    }

    /** A person signed in by password with these roles. */
    public static SignedIn of(Role... roles) {
        return new SignedIn(Caller.person(MARK, "Tester", Set.of(roles), Caller.Means.PASSWORD, null));
    }
}
