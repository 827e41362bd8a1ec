package dev.sunthread.access.people;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.access.AccessProperties;
import dev.sunthread.access.Role;
import dev.sunthread.testing.SunthreadTest;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;

/** Who is there after the first start. */
@SunthreadTest
@ExtendWith(OutputCaptureExtension.class)
class FirstPeopleTests {

    private static final Pattern PRINTED = Pattern.compile("Sign in as \"admin\" with the password (\\S+) ;");

    @Autowired
    FirstPeople first;

    @Autowired
    People people;

    @Autowired
    Credentials credentials;

    @Autowired
    SignIns signIns;

    @Autowired
    AccessProperties properties;

    @Test
    void isOneAdministratorHoweverManyInstancesStart(CapturedOutput output) throws Exception {
        var instances = Executors.newFixedThreadPool(4);
        try {
            Callable<Object> start = Executors.callable(() -> administrator().run());
            for (var one : instances.invokeAll(List.of(start, start, start, start))) {
                one.get();
            }
        } finally {
            instances.shutdownNow();
        }
        assertThat(people.all()).singleElement().matches(Person::mustChange);
        Matcher printed = PRINTED.matcher(output.getAll());
        assertThat(printed.find()).isTrue();
        assertThat(signIns.byPassword("Admin", printed.group(1)).roles()).containsExactly(Role.ADMINISTRATOR);
        assertThat(printed.find()).isFalse();
    }

    @Test
    void isNobodyNewWhereSomebodyIs(CapturedOutput output) {
        people.add(FirstPeople.said("qe-1", "Ines", "ines", Role.QUALITY));
        administrator().run();
        assertThat(people.all()).hasSize(1);
        assertThat(output.getAll()).doesNotContain("with the password");
    }

    @Test
    void isOnePersonForEachRoleInTheDemoWhoSignInAsDocumented(CapturedOutput output) {
        DemoPeople demo = new DemoPeople(first, people, credentials);
        demo.run();
        demo.run();
        assertThat(output.getAll()).contains("DEMO USERS exist");
        assertThat(demo.names()).containsExactly("operator", "quality", "process", "auditor", "administrator");
        assertThat(demo.names())
                .allSatisfy(name -> assertThat(
                                signIns.byPassword(name, DemoPeople.PASSWORD).roles())
                        .containsExactly(Role.valueOf(name.toUpperCase(java.util.Locale.ROOT))));
        assertThat(signIns.byBadge("BADGE-op-19", DemoPeople.PIN, "BOND-1").mark())
                .isEqualTo("op-19");
    }

    @Test
    void isToldToOperatorsOfTheDemoInItsReadme() throws Exception {
        String readme = java.nio.file.Files.readString(java.nio.file.Path.of("README.md"));
        assertThat(Stream.concat(Arrays.stream(Role.values()).map(Role::word), Stream.of(DemoPeople.PASSWORD)))
                .allSatisfy(word -> assertThat(readme).contains("`" + word));
    }

    private FirstAdministrator administrator() {
        var wanted = new AccessProperties(
                true, properties.desk(), properties.station(), properties.lockOut(), properties.hash());
        return new FirstAdministrator(first, people, credentials, wanted);
    }
}
