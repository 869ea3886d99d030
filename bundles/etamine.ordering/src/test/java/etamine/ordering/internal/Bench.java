package etamine.ordering.internal;

import static etamine.ordering.internal.SetKitchenware.item;

import etamine.base.Printout;
import etamine.base.Progress;
import etamine.base.verb.Report;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.documents.Block;
import etamine.documents.Documents;
import etamine.documents.Paper;
import etamine.documents.Workbook;
import etamine.kitchen.par.Par;
import etamine.measures.Quantity;
import etamine.measures.Unit;
import etamine.ordering.internal.SetKitchenware.SetDiary;
import etamine.ordering.internal.SetKitchenware.SetItems;
import etamine.ordering.internal.SetKitchenware.SetStock;
import etamine.testing.SetClock;
import etamine.testing.SetKitchen;
import etamine.testing.VolatileBook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The module's services on a volatile book, on the morning of Tuesday 24 November 2026 in Dublin. */
final class Bench {
    final VolatileBook book = new VolatileBook();
    final SetClock clock = SetClock.at("2026-11-24T09:00:00Z");
    final SetKitchen kitchen =
            new SetKitchen(SetKitchen.at("2026-11-24T09:00:00Z").house(), clock);
    final Neighbours neighbours = new Neighbours();
    final SetCatalogue catalogue = new SetCatalogue();
    final SetStock stock = new SetStock();
    final SetDiary diary = new SetDiary();
    final ShelfPars pars = new ShelfPars(book);
    final ShelfOrders orders = new ShelfOrders(book, kitchen, neighbours);
    final DiaryUse use = new DiaryUse(neighbours);
    final PlanDesk desk = new PlanDesk(book, kitchen, neighbours, pars, orders, use);
    final OrderVerb orderVerb = new OrderVerb(desk, orders, kitchen, neighbours);
    final OrdersVerb ordersVerb = new OrdersVerb(desk, orders, neighbours);
    final PlanVerb planVerb = new PlanVerb(desk, kitchen, neighbours);

    /** A kitchen with a dairy that comes on Tuesdays and Fridays, and pars for cream and butter. */
    static Bench withDairy() {
        Bench bench = new Bench();
        bench.neighbours.items = new SetItems(item("cream", Unit.L), item("butter", Unit.KG));
        bench.neighbours.catalogue = bench.catalogue;
        bench.neighbours.stock = bench.stock;
        bench.neighbours.diary = bench.diary;
        bench.neighbours.documents = new PlainDocuments();
        bench.catalogue
                .supplier("dairy", "20.00", "6.00", DayOfWeek.TUESDAY, DayOfWeek.FRIDAY)
                .offer("dairy", "cream", "D-104", "6 x 1 l", "24.60")
                .offer("dairy", "butter", "D-201", "2 kg", "15.00");
        bench.stock.lot("cream", "4.5 l", "2026-12-01");
        bench.pars.set(par("cream", "8 l"));
        bench.pars.set(par("butter", "3 kg"));
        return bench;
    }

    static Par par(String item, String level) {
        return new Par(item, Quantity.parse(level), Map.of(), Optional.empty(), Optional.empty());
    }

    Report run(Verb verb, Path folder, Map<String, String> options, String... arguments) throws VerbException {
        return verb.run(new VerbCall(List.of(arguments), options, "memory", folder, Progress.unseen()));
    }

    /** Writes papers as plain text, so that a test can read them; fails where a test says so, or lets it act after. */
    static final class PlainDocuments implements Documents {
        String failsFor = "";
        Runnable afterPdf = () -> {};

        @Override
        public void pdf(Paper paper, Path file) throws IOException {
            write(paper.title() + "\n" + paper.blocks(), file);
            afterPdf.run();
        }

        @Override
        public void html(Paper paper, Path file) throws IOException {
            write(paper.title() + "\n" + paper.blocks(), file);
        }

        @Override
        public void csv(Block.Grid grid, Path file) throws IOException {
            write(grid.rows().stream().map(row -> String.join(",", row)).collect(Collectors.joining("\n")), file);
        }

        @Override
        public void csv(Workbook.Sheet sheet, Path file) throws IOException {
            write(sheet.toString(), file);
        }

        @Override
        public void xlsx(Workbook workbook, Path file) throws IOException {
            write(workbook.toString(), file);
        }

        @Override
        public Printout printout(Paper paper) {
            throw new AssertionError("Orders are written, not printed here: " + paper.title());
        }

        private void write(String text, Path file) throws IOException {
            if (file.getFileName().toString().equals(failsFor)) {
                throw new IOException("no room");
            }
            Files.writeString(file, text);
        }
    }
}
