package dev.sunthread.access.people;

import dev.sunthread.access.Role;
import java.util.Arrays;
import java.util.List;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.CommandLineRunner;
import org.springframework.boot.autoconfigure.condition.ConditionalOnWebApplication;
import org.springframework.context.annotation.Profile;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** One person per role in the profile {@code demo}, with passwords that everybody can read. */
@Component("demoPeople")
@Profile("demo")
@ConditionalOnWebApplication
@Order(1)
public class DemoPeople implements CommandLineRunner {

    /** The password of every demo person. */
    public static final String PASSWORD = "cells in the sun";
    /** The PIN of every demo person. */
    public static final String PIN = "246810";

    private static final Logger LOG = LoggerFactory.getLogger(DemoPeople.class);
    /** Persons whom the demo plant knows, one for each role in its order. */
    private static final List<String> MARKS = List.of("op-19", "qe-03", "pe-01", "au-01", "ad-01");

    private final FirstPeople first;
    private final People people;
    private final Credentials credentials;

    DemoPeople(FirstPeople first, People people, Credentials credentials) {
        this.first = first;
        this.people = people;
        this.credentials = credentials;
    }

    @Override
    public void run(String... args) {
        first.make(this::make);
        LOG.warn(
                "DEMO USERS exist: {}, each with the password \"{}\". Everybody can read it: never record anything real here.",
                names(),
                PASSWORD);
    }

    private void make() {
        for (Role role : Role.values()) {
            String mark = MARKS.get(role.ordinal());
            people.add(FirstPeople.said(mark, "Demo " + role.word(), role.word(), role));
            credentials.setDocumented(mark, PASSWORD, "BADGE-" + mark, PIN);
        }
    }

    /** The sign-in names, which are the roles. */
    public List<String> names() {
        return Arrays.stream(Role.values()).map(Role::word).toList();
    }

    public String password() {
        return PASSWORD;
    }
}
