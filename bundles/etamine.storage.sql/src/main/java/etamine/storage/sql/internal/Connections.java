package etamine.storage.sql.internal;

import etamine.storage.BookException;
import etamine.storage.BookException.Reason;
import java.lang.System.Logger;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Deque;
import java.util.concurrent.ConcurrentLinkedDeque;

/** One connection that writes and as many that read as there are readers at a time, so that reads never wait. */
final class Connections {
    private static final Logger LOG = System.getLogger(Connections.class.getName());
    private static final int KEPT_IDLE = 4;

    private final String location;
    private final Dialect dialect;
    private final Opener opener;
    private final Session writer;
    private final Deque<Session> idle = new ConcurrentLinkedDeque<>();
    private volatile boolean closed;

    /** Opens a connection. */
    @FunctionalInterface
    interface Opener {
        Connection open(boolean writes) throws SQLException;
    }

    /**
     * What is done with a session.
     *
     * @param <T> what it finds out
     */
    @FunctionalInterface
    interface Act<T> {
        T on(Session session) throws SQLException;
    }

    /** Opens the connection that writes, or that stands for it in a book that may only be read. */
    Connections(String location, Dialect dialect, Opener opener) {
        this.location = location;
        this.dialect = dialect;
        this.opener = opener;
        try {
            this.writer = new Session(opener.open(true));
        } catch (SQLException problem) {
            throw dialect.problem(problem, location);
        }
    }

    <T> T read(Act<T> act) {
        requireOpen();
        try {
            Session known = idle.poll();
            Session session = known != null ? known : new Session(opener.open(false));
            try {
                return act.on(session);
            } finally {
                giveBack(session);
            }
        } catch (SQLException problem) {
            requireOpen();
            throw dialect.problem(problem, location);
        }
    }

    /** Runs {@code act} in one durable transaction, or leaves nothing of it. One thread at a time. */
    void write(Act<Void> act) {
        requireOpen();
        try {
            writer.connection().setAutoCommit(false);
            act.on(writer);
            writer.connection().commit();
        } catch (SQLException problem) {
            throw dialect.problem(problem, location);
        } finally {
            endTransaction();
        }
    }

    /** Takes back what was not committed; SQLite may have done so itself, and then says that there is nothing. */
    private void endTransaction() {
        try {
            writer.connection().rollback();
        } catch (SQLException alreadyEnded) {
            LOG.log(Logger.Level.DEBUG, "Nothing to roll back in " + location, alreadyEnded);
        }
        try {
            writer.connection().setAutoCommit(true);
        } catch (SQLException problem) {
            LOG.log(Logger.Level.WARNING, "The transaction in " + location + " could not be ended", problem);
        }
    }

    private void giveBack(Session session) {
        if (closed || idle.size() >= KEPT_IDLE) {
            close(session);
            return;
        }
        idle.offer(session);
        if (closed) {
            closeIdle();
        }
    }

    private void requireOpen() {
        if (closed) {
            throw new BookException(Reason.OTHER, "The book " + location + " is closed; open it again.");
        }
    }

    void close() {
        closed = true;
        closeIdle();
        close(writer);
    }

    private void closeIdle() {
        for (Session session = idle.poll(); session != null; session = idle.poll()) {
            close(session);
        }
    }

    private void close(Session session) {
        try {
            session.close();
        } catch (SQLException problem) {
            LOG.log(Logger.Level.WARNING, "A connection to " + location + " could not be closed", problem);
        }
    }
}
