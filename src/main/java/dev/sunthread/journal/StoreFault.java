package dev.sunthread.journal;

import dev.sunthread.kernel.Refused;
import java.sql.SQLException;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.DataAccessException;
import org.springframework.dao.DataAccessResourceFailureException;
import org.springframework.transaction.CannotCreateTransactionException;

/** Why the database did not store something, in words for whoever sent it. */
final class StoreFault {

    private static final String DISK_FULL = "53100";

    /** Classes of SQLSTATE (PostgreSQL's Appendix A): connection, resources, the server going down, its system. */
    private static final Set<String> NO_ROOM = Set.of("08", "53", "57", "58");

    /** A statement that was ended because it took too long, or by an administrator. */
    private static final String CANCELED = "57014";

    private StoreFault() {}

    /** What the database says, as the end of a sentence; never the words of the program around it. */
    static String words(DataAccessException fault) {
        SQLException said = said(fault);
        String message = said == null ? null : said.getMessage();
        return message == null
                ? "the database does not take it"
                : "the database says " + message.lines().findFirst().orElse("").replace("ERROR: ", "");
    }

    /** Whether not what was sent is at fault, but that the database has no room, or is not there. */
    static boolean isNoRoom(RuntimeException fault) {
        SQLException said = said(fault);
        String state = said == null ? null : said.getSQLState();
        return fault instanceof DataAccessResourceFailureException
                || fault instanceof CannotCreateTransactionException
                || state != null
                        && state.length() == 5
                        && NO_ROOM.contains(state.substring(0, 2))
                        && !state.equals(CANCELED);
    }

    static Refused noRoom(RuntimeException fault) {
        SQLException said = said(fault);
        return said != null && DISK_FULL.equals(said.getSQLState())
                ? new Refused("The disk of the database is full", "Make room on it, then send the file again whole")
                : new Refused(
                        "The database could not be reached, or had no room to go on",
                        "See that it runs and has room, then send the file again whole");
    }

    /** The last exception of the database itself; a batch hides it behind one without words. */
    private static @Nullable SQLException said(Throwable fault) {
        SQLException said = null;
        for (Throwable cause = fault; cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLException sql) {
                said = sql.getNextException() == null ? sql : sql.getNextException();
            }
        }
        return said;
    }
}
