package dev.sunthread.access.signin;

import dev.sunthread.access.Caller.Means;
import dev.sunthread.access.machine.Devices;
import dev.sunthread.access.people.Person;
import dev.sunthread.access.people.SignIns;
import java.time.Clock;
import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;
import org.springframework.security.authentication.AuthenticationProvider;
import org.springframework.security.authentication.BadCredentialsException;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.stereotype.Component;

/** Signs persons in, by name and password anywhere or by badge and PIN at a device of a station. */
@Component
class PersonSignIn implements AuthenticationProvider {

    private final SignIns signIns;
    private final Devices devices;
    private final Clock clock;

    PersonSignIn(SignIns signIns, Devices devices, Clock clock) {
        this.signIns = signIns;
        this.devices = devices;
        this.clock = clock;
    }

    @Override
    public Authentication authenticate(Authentication asked) {
        String name = asked.getName();
        String secret = String.valueOf(asked.getCredentials());
        if (!(asked.getDetails() instanceof SignInDetails details) || !details.byBadge()) {
            // a badge scanned into the form of a desk comes without a password: it is tried, counted and noted nowhere
            if (secret.isEmpty()) {
                throw new BadCredentialsException("no password");
            }
            return signedIn(signIns.byPassword(name, secret), Means.PASSWORD, null);
        }
        String station = devices.station(details.device())
                .orElseThrow(() -> new BadCredentialsException("no device of a station"));
        return signedIn(signIns.byBadge(name, secret, station), Means.BADGE, station);
    }

    private SignedIn signedIn(Person person, Means means, @Nullable String station) {
        var signIn = new SignIn(person.mark(), means, OffsetDateTime.now(clock), station);
        return new SignedIn(PersonCallers.caller(person, signIn), signIn);
    }

    @Override
    public boolean supports(Class<?> authentication) {
        return UsernamePasswordAuthenticationToken.class.isAssignableFrom(authentication);
    }
}
