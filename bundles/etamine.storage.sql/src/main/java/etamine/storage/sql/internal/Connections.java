package etamine.storage.sql.internal;

import etamine.storage.BookException;
import etamine.storage.BookException.Reason;
import java.lang.System.Logger;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Deque;
import java.util.Optional;
import java.util.concurrent.ConcurrentLinkedDeque;

/** One connection that writes and as many that read as there are readers at a time, so that reads never wait. */
final class Connections {
    private static final Logger LOG = System.getLogger(Connections.class.getName());
    private static final int KEPT_IDLE = 4;

    private final String location;
    private final Dialect dialect;
    private final Opener opener;
    private final Deque<Session> idle = new ConcurrentLinkedDeque<>();
    private Optional<Session> writer = Optional.empty();
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

    /** Opens the connection that writes, which first takes over what a program that ended early left behind. */
    Connections(String location, Dialect dialect, Opener opener) {
        this.location = location;
        this.dialect = dialect;
        this.opener = opener;
        try {
            writer();
        } catch (SQLException problem) {
            throw dialect.problem(problem, location);
        }
    }

    private Session writer() throws SQLException {
        if (writer.isEmpty()) {
            writer = Optional.of(new Session(opener.open(true)));
        }
        return writer.get();
    }

    <T> T read(Act<T> act) {
        requireOpen();
        try {
            Session known = idle.poll();
            Session session = known != null ? known : new Session(opener.open(false));
            boolean sound = false;
            try {
                T result = act.on(session);
                sound = true;
                return result;
            } finally {
                giveBack(session, sound);
            }
        } catch (SQLException problem) {
            requireOpen();
            throw dialect.problem(problem, location);
        }
    }

    /**
     * Runs {@code act} in one durable transaction, or leaves nothing of it. One thread at a time. After a failure the
     * connection is given up, which takes back what it did whatever state the database left it in.
     */
    void write(Act<Void> act) {
        requireOpen();
        boolean sound = false;
        try {
            Session session = writer();
            session.run(dialect.begin());
            act.on(session);
            session.run("commit");
            sound = true;
        } catch (SQLException problem) {
            throw dialect.problem(problem, location);
        } finally {
            if (!sound) {
                closeWriter();
            }
        }
    }

    private void giveBack(Session session, boolean sound) {
        if (!sound || closed || idle.size() >= KEPT_IDLE) {
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

    /** Closes the writing connection last, because only that one can leave the book in a single file. */
    void close() {
        closed = true;
        closeIdle();
        try {
            writer();
        } catch (SQLException problem) {
            LOG.log(Logger.Level.WARNING, location + " could not be tidied up", problem);
        }
        closeWriter();
    }

    private void closeWriter() {
        writer.ifPresent(this::close);
        writer = Optional.empty();
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
