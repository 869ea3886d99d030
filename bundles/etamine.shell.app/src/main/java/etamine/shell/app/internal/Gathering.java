package etamine.shell.app.internal;

import etamine.kitchen.find.Finder;
import etamine.kitchen.house.DemoKitchen;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.today.CallSource;
import etamine.kitchen.today.DayMarkSource;
import etamine.shell.Station;
import etamine.storage.Book;
import etamine.storage.BookSession;

/**
 * Everything the window finds in the registry.
 *
 * @param session opens and closes books
 * @param books the open book, if any
 * @param kitchens the house of the open book
 * @param demos the demo kitchen, where it is installed
 * @param stations the benches to offer
 * @param calls who makes calls for the pass
 * @param marks who puts marks on the ribbon
 * @param finders who finds things
 */
record Gathering(
        BookSession session,
        Gathered<Book> books,
        Gathered<Kitchen> kitchens,
        Gathered<DemoKitchen> demos,
        Gathered<Station> stations,
        Gathered<CallSource> calls,
        Gathered<DayMarkSource> marks,
        Gathered<Finder> finders) {

    /** Nothing found yet. */
    static Gathering around(BookSession session) {
        return new Gathering(
                session,
                new Gathered<>(),
                new Gathered<>(),
                new Gathered<>(),
                new Gathered<>(),
                new Gathered<>(),
                new Gathered<>(),
                new Gathered<>());
    }
}
