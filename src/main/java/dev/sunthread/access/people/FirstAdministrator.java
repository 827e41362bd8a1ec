package dev.sunthread.access.people;

import dev.sunthread.access.AccessProperties;
import dev.sunthread.access.Role;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.CommandLineRunner;
import org.springframework.boot.autoconfigure.condition.ConditionalOnWebApplication;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** Makes an administrator at the first start, with a password that is printed once and has to be changed. */
@Component
@ConditionalOnWebApplication
@Order(2)
class FirstAdministrator implements CommandLineRunner {

    static final String NAME = "admin";
    private static final Logger LOG = LoggerFactory.getLogger(FirstAdministrator.class);

    private final FirstPeople first;
    private final People people;
    private final Credentials credentials;
    private final boolean wanted;

    FirstAdministrator(FirstPeople first, People people, Credentials credentials, AccessProperties properties) {
        this.first = first;
        this.people = people;
        this.credentials = credentials;
        this.wanted = properties.firstAdministrator();
    }

    @Override
    public void run(String... args) {
        if (wanted) {
            first.make(this::make);
        }
    }

    private void make() {
        people.add(FirstPeople.said("ad-01", "First administrator", NAME, Role.ADMINISTRATOR));
        LOG.warn(
                "Nobody could sign in yet, so an administrator was made. Sign in as \"{}\" with the password {} ;"
                        + " it is shown this once and has to be changed at the first sign-in.",
                NAME,
                credentials.oneTimePassword("ad-01"));
    }
}
