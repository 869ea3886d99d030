package etamine.storage.sql.internal;

import etamine.storage.Commit.DocumentChange;
import etamine.storage.Document;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Reads and writes documents. */
final class SqlDocuments {
    private static final String SELECT = "select r.id, r.revision, c.at, c.label, r.json from revisions r"
            + " join commits c on c.revision = r.written";
    private static final String LATEST = SELECT
            + " join documents d on d.shelf = r.shelf and d.id = r.id and d.revision = r.revision where d.shelf = ?";

    private static final String IDS = "select d.id from documents d join revisions r"
            + " on r.shelf = d.shelf and r.id = d.id and r.revision = d.revision"
            + " where d.shelf = ? and r.json <> '' order by d.id";

    private static final String AS_OF = SELECT
            + " where r.shelf = ? and r.revision = (select max(p.revision) from revisions p"
            + " join commits b on b.revision = p.written where p.shelf = r.shelf and p.id = r.id and b.at <= ?)"
            + " and r.json <> '' order by r.id";

    private SqlDocuments() {}

    static Optional<Document> latest(Session session, String shelf, String id) throws SQLException {
        return session.first(LATEST + " and d.id = ?", SqlDocuments::document, shelf, id);
    }

    static List<Document> present(Session session, String shelf) throws SQLException {
        return session.list(LATEST + " and r.json <> '' order by d.id", SqlDocuments::document, shelf);
    }

    static List<String> presentIds(Session session, String shelf) throws SQLException {
        return session.list(IDS, row -> row.getString(1), shelf);
    }

    static List<Document> revisions(Session session, String shelf, String id) throws SQLException {
        return session.list(
                SELECT + " where r.shelf = ? and r.id = ? order by r.revision", SqlDocuments::document, shelf, id);
    }

    static List<Document> asOf(Session session, String shelf, Instant at) throws SQLException {
        return session.list(AS_OF, SqlDocuments::document, shelf, Moments.toNumber(at));
    }

    static List<Document> firsts(Session session, String shelf) throws SQLException {
        return session.list(
                SELECT + " where r.shelf = ? and r.revision = 1 order by r.id", SqlDocuments::document, shelf);
    }

    static void write(Session session, DocumentChange change, long written) throws SQLException {
        Document document = change.document();
        session.run(
                "insert into revisions (shelf, id, revision, written, json) values (?, ?, ?, ?, ?)",
                change.shelf(),
                document.id(),
                document.revision(),
                written,
                document.json());
        session.run(
                "insert into documents (shelf, id, revision) values (?, ?, ?)"
                        + " on conflict (shelf, id) do update set revision = excluded.revision",
                change.shelf(),
                document.id(),
                document.revision());
    }

    private static Document document(ResultSet row) throws SQLException {
        return new Document(
                row.getString(1),
                row.getLong(2),
                Moments.toInstant(row.getLong(3)),
                row.getString(4),
                row.getString(5));
    }
}
