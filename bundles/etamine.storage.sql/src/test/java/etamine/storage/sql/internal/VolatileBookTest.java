package etamine.storage.sql.internal;

import etamine.storage.Books;
import etamine.testing.SetClock;
import etamine.testing.VolatileBooks;

class VolatileBookTest extends WholeBookContract {
    @Override
    Books books(SetClock clock) {
        return new VolatileBooks(clock);
    }
}
