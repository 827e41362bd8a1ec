package dev.sunthread.access.people;

import dev.sunthread.access.Role;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The tables of persons. */
@Repository
class PersonRows {

    private static final String PERSON = """
            SELECT p.id, p.mark, p.name, p.sign_in,
              (SELECT coalesce(string_agg(r.role, ' '), '') FROM access.person_role r WHERE r.person = p.id) AS role_names,
              p.password_hash IS NOT NULL AS has_password, p.must_change, p.badge_ending,
              p.pin_hash IS NOT NULL AS has_pin, p.secrets_changed_at, p.blocked, p.blanked
            FROM access.person p
            """;

    private final JdbcClient jdbc;
    private final Clock clock;

    PersonRows(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    List<Person> all() {
        return jdbc.sql(PERSON + " ORDER BY p.blanked, p.mark")
                .query(DataClassRowMapper.newInstance(Person.class))
                .list();
    }

    Optional<Person> marked(String mark) {
        return where("p.mark = ?", mark);
    }

    Optional<Person> signingInAs(String name) {
        return where("lower(p.sign_in) = lower(?)", name);
    }

    Optional<Person> withBadge(byte[] hash) {
        return where("p.badge_hash = ?", hash);
    }

    private Optional<Person> where(String condition, Object value) {
        return jdbc.sql(PERSON + " WHERE " + condition)
                .param(value)
                .query(DataClassRowMapper.newInstance(Person.class))
                .optional();
    }

    boolean none() {
        return jdbc.sql("SELECT NOT EXISTS (SELECT FROM access.person)")
                .query(Boolean.class)
                .single();
    }

    /** Whether anybody but this person can sign in as administrator; locks all who can now. */
    boolean anotherAdministrator(long person) {
        return jdbc.sql("""
                        SELECT p.id FROM access.person p JOIN access.person_role r ON r.person = p.id
                        WHERE r.role = 'ADMINISTRATOR' AND NOT p.blocked AND p.password_hash IS NOT NULL
                        ORDER BY p.id FOR UPDATE OF p
                        """).query(Long.class).list().stream().anyMatch(id -> id != person);
    }

    /** Takes a mark for good; false if it was taken before. */
    boolean take(String mark) {
        return jdbc.sql("INSERT INTO access.mark (mark) VALUES (?) ON CONFLICT DO NOTHING")
                        .param(mark)
                        .update()
                == 1;
    }

    void insert(String mark, String name, @Nullable String signIn) {
        jdbc.sql("INSERT INTO access.person (mark, name, sign_in, made_at, secrets_changed_at) VALUES (?, ?, ?, ?, ?)")
                .params(mark, name)
                .param(signIn)
                .params(OffsetDateTime.now(clock), OffsetDateTime.now(clock))
                .update();
    }

    void describe(long person, @Nullable String name, @Nullable String signIn) {
        jdbc.sql("UPDATE access.person SET name = ?, sign_in = ? WHERE id = ?")
                .param(name)
                .param(signIn)
                .param(person)
                .update();
    }

    void setRoles(long person, Collection<Role> roles) {
        jdbc.sql("DELETE FROM access.person_role WHERE person = ?")
                .param(person)
                .update();
        jdbc.sql("INSERT INTO access.person_role (person, role) SELECT ?, unnest(?)")
                .param(person)
                .param(roles.stream().map(Role::name).distinct().toArray(String[]::new))
                .update();
    }

    void setBlocked(long person, boolean blocked) {
        jdbc.sql("UPDATE access.person SET blocked = ? WHERE id = ?")
                .params(blocked, person)
                .update();
    }

    /** Leaves nothing of a person but the mark. */
    void blank(long person) {
        jdbc.sql("""
                        UPDATE access.person SET name = NULL, sign_in = NULL, password_hash = NULL, pin_hash = NULL,
                          badge_hash = NULL, badge_ending = NULL, blocked = true, blanked = true WHERE id = ?
                        """).param(person).update();
    }
}
