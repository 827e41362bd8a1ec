package dev.sunthread.access.signin;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.access.AccessProperties;
import dev.sunthread.access.Caller.Means;
import dev.sunthread.access.Right;
import dev.sunthread.access.Role;
import dev.sunthread.access.people.Credentials;
import dev.sunthread.access.people.People;
import dev.sunthread.testing.KnownPeople;
import dev.sunthread.testing.SunthreadTest;
import java.time.Clock;
import java.time.Duration;
import java.time.OffsetDateTime;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

/** How long a sign-in is worth something, and what it is worth. */
@SunthreadTest
class PersonCallersTests {

    @Autowired
    ApplicationContext context;

    @Autowired
    People people;

    @Autowired
    Credentials credentials;

    @Autowired
    AccessProperties properties;

    private OffsetDateTime signedInAt = OffsetDateTime.MIN;

    @BeforeEach
    void somebodySignsIn() {
        new KnownPeople(context).add("pe-1", Role.PROCESS, Role.ADMINISTRATOR);
        signedInAt = OffsetDateTime.now().plusSeconds(1);
    }

    @Test
    void endsAfterTheLongestTimeHoweverBusyThePersonIs() {
        Duration longest = properties.desk().longest();
        assertThat(after(longest).of(signIn(Means.PASSWORD))).isPresent();
        assertThat(after(longest.plusSeconds(1)).of(signIn(Means.PASSWORD))).isEmpty();
    }

    @Test
    void endsWithAnyChangeOfWhatThePersonSignsInBy() {
        credentials.setPin("pe-1", "271828");
        var before = new SignIn("pe-1", Means.PASSWORD, signedInAt.minusMinutes(1), null);
        assertThat(after(Duration.ZERO).of(before)).isEmpty();
    }

    @Test
    void isWorthLessByBadgeThanByPassword() {
        assertThat(rights(Means.PASSWORD))
                .contains(Right.WORK, Right.DEFINE, Right.SET_UP, Right.ADMINISTER, Right.RESTORE);
        assertThat(rights(Means.BADGE))
                .contains(Right.WORK, Right.DEFINE, Right.LOOK_UP, Right.OWN_ACCOUNT)
                .doesNotContain(Right.SET_UP, Right.ADMINISTER, Right.RESTORE, Right.IMPORT, Right.EXPORT);
    }

    private java.util.Set<Right> rights(Means means) {
        return after(Duration.ZERO)
                .of(signIn(means))
                .orElseThrow()
                .getPrincipal()
                .rights();
    }

    private SignIn signIn(Means means) {
        return new SignIn("pe-1", means, signedInAt, means == Means.BADGE ? "BOND" : null);
    }

    private PersonCallers after(Duration time) {
        Clock then = Clock.fixed(signedInAt.plus(time).toInstant(), java.time.ZoneOffset.UTC);
        return new PersonCallers(people, properties, then);
    }
}
