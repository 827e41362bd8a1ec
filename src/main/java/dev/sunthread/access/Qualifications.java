package dev.sunthread.access;

import dev.sunthread.access.AccessLog.Event;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Which operations a person may do and on what evidence, with all that was ever given and withdrawn. */
@Service
public class Qualifications {

    /** One qualification of a person for one operation. */
    public record Qualification(
            long id,
            String operation,
            String evidence,
            OffsetDateTime givenAt,
            String givenBy,
            @Nullable OffsetDateTime validUntil,
            @Nullable OffsetDateTime withdrawnAt) {}

    private final JdbcClient jdbc;
    private final AccessLog log;
    private final Callers callers;
    private final Clock clock;

    Qualifications(JdbcClient jdbc, AccessLog log, Callers callers, Clock clock) {
        this.jdbc = jdbc;
        this.log = log;
        this.callers = callers;
        this.clock = clock;
    }

    /** Whether the person with this mark was qualified for an operation at a moment. */
    public boolean covers(String mark, String operation, OffsetDateTime at) {
        return jdbc.sql("""
                        SELECT EXISTS (
                          SELECT FROM access.qualification q JOIN access.person p ON p.id = q.person
                          WHERE p.mark = :mark AND q.operation = :operation AND q.given_at <= :at
                            AND (q.valid_until IS NULL OR q.valid_until > :at)
                            AND (q.withdrawn_at IS NULL OR q.withdrawn_at > :at))
                        """)
                .param("mark", mark)
                .param("operation", operation)
                .param("at", at)
                .query(Boolean.class)
                .single();
    }

    /** Whether the mark is of a person known here who was not qualified for an operation at a moment. */
    public boolean lacks(String mark, String operation, OffsetDateTime at) {
        boolean known = jdbc.sql("SELECT EXISTS (SELECT FROM access.person WHERE mark = ?)")
                .param(mark)
                .query(Boolean.class)
                .single();
        return known && !covers(mark, operation, at);
    }

    /** All that a person was ever given, the latest first. */
    public List<Qualification> of(String mark) {
        return jdbc.sql("""
                        SELECT q.id, q.operation, q.evidence, q.given_at, q.given_by, q.valid_until, q.withdrawn_at
                        FROM access.qualification q JOIN access.person p ON p.id = q.person
                        WHERE p.mark = ? ORDER BY q.id DESC
                        """)
                .param(mark)
                .query(DataClassRowMapper.newInstance(Qualification.class))
                .list();
    }

    /** Gives a person a qualification from now on. */
    @Transactional
    public void give(String mark, String operation, String evidence, @Nullable OffsetDateTime validUntil) {
        jdbc.sql("""
                        INSERT INTO access.qualification (person, operation, evidence, given_at, given_by, valid_until)
                        SELECT id, ?, ?, ?, ?, ? FROM access.person WHERE mark = ?
                        """)
                .params(operation, evidence, OffsetDateTime.now(clock), by())
                .param(validUntil)
                .param(mark)
                .update();
        log.note(Event.QUALIFICATION_GIVEN, mark, operation);
    }

    /** Takes a qualification of a person back from now on; does nothing if it was before. */
    @Transactional
    public void withdraw(String mark, long id) {
        jdbc.sql("""
                        UPDATE access.qualification q SET withdrawn_at = ?, withdrawn_by = ? FROM access.person p
                        WHERE p.id = q.person AND p.mark = ? AND q.id = ? AND q.withdrawn_at IS NULL
                        RETURNING q.operation
                        """)
                .params(OffsetDateTime.now(clock), by(), mark, id)
                .query(String.class)
                .optional()
                .ifPresent(operation -> log.note(Event.QUALIFICATION_WITHDRAWN, mark, operation));
    }

    private String by() {
        return callers.signedIn().mark();
    }
}
