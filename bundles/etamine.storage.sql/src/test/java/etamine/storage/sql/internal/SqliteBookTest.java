package etamine.storage.sql.internal;

import etamine.storage.Books;
import etamine.testing.SetClock;

class SqliteBookTest extends WholeBookContract {
    @Override
    Books books(SetClock clock) {
        return new SqliteBooks(clock);
    }
}
