package dev.sunthread.access;

import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Finds the mark of a person by what a person can write or scan: the mark, the badge, or a name that one person has. */
@Repository
public class PersonMarks {

    private final JdbcClient jdbc;

    PersonMarks(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The mark of the one person that a text names; empty if it names nobody or several. */
    public Optional<String> of(String text) {
        List<String> marks = jdbc.sql("""
                        SELECT mark FROM access.person
                        WHERE mark = :text OR badge_hash = :badge OR lower(name) = lower(:text) ORDER BY mark <> :text
                        """)
                .param("text", text.strip())
                .param("badge", Secrets.hash(text.strip()))
                .query(String.class)
                .list();
        return marks.size() == 1 || marks.contains(text.strip())
                ? marks.stream().findFirst()
                : Optional.empty();
    }
}
