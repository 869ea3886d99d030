package etamine.ordering.internal;

import etamine.documents.Block;
import etamine.documents.Block.Column;
import etamine.documents.Block.Facts;
import etamine.documents.Block.Grid;
import etamine.documents.Documents;
import etamine.documents.Paper;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.order.OrderLine;
import etamine.kitchen.order.SupplierOrder;
import etamine.kitchen.supply.Supplier;
import etamine.measures.MeasureStyle;
import etamine.measures.Money;
import etamine.measures.QuantityText;
import etamine.measures.Ratio;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Writes an order as the supplier gets it: a CSV file for machines and a PDF for people. */
final class OrderPapers {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEEE d MMMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter MOMENT =
            DateTimeFormatter.ofPattern("EEEE d MMMM yyyy, HH:mm", Locale.ENGLISH);

    private final Documents documents;
    private final Kitchen kitchen;
    private final Neighbours neighbours;

    OrderPapers(Documents documents, Kitchen kitchen, Neighbours neighbours) {
        this.documents = documents;
        this.kitchen = kitchen;
        this.neighbours = neighbours;
    }

    /** Writes both files, each complete or absent, and gives their places. */
    List<Path> write(SupplierOrder order, Path folder) throws IOException {
        Files.createDirectories(folder);
        Path csv = folder.resolve(order.id() + ".csv");
        Path pdf = folder.resolve(order.id() + ".pdf");
        documents.csv(machineGrid(order), csv);
        documents.pdf(paper(order), pdf);
        return List.of(csv, pdf);
    }

    /** The order for machines: plain figures, one line a row. */
    Grid machineGrid(SupplierOrder order) {
        List<Column> columns = columns(
                "order",
                "supplier",
                "deliver",
                "code",
                "item",
                "name",
                "packs",
                "pack",
                "packPrice",
                "amount",
                "currency");
        List<List<String>> rows = new ArrayList<>();
        for (OrderLine line : order.lines()) {
            rows.add(List.of(
                    order.id(),
                    order.supplier(),
                    order.deliver().toString(),
                    line.code(),
                    line.item(),
                    neighbours.itemName(line.item()),
                    String.valueOf(line.packs()),
                    line.pack().toString(),
                    line.packPrice().toString(),
                    line.amount().toString(),
                    line.amount().currency().getCurrencyCode()));
        }
        return new Grid(columns, rows, List.of());
    }

    private static List<Column> columns(String... headings) {
        List<Column> columns = new ArrayList<>();
        for (String heading : headings) {
            columns.add(new Column(heading, 1, false));
        }
        return columns;
    }

    /** The order for people. */
    Paper paper(SupplierOrder order) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Facts(facts(order)));
        blocks.add(humanGrid(order));
        blocks.add(new Facts(totals(order)));
        boolean us = kitchen.house().measures() == MeasureStyle.US;
        return new Paper(
                "Order " + order.id(),
                kitchen.house().name(),
                blocks,
                "Prices without tax. Goods sold by weight are charged as weighed.",
                us ? Paper.Size.LETTER : Paper.Size.A4);
    }

    private List<Facts.Pair> facts(SupplierOrder order) {
        List<Facts.Pair> facts = new ArrayList<>();
        facts.add(new Facts.Pair("To", neighbours.supplierName(order.supplier())));
        supplier(order.supplier())
                .map(Supplier::email)
                .filter(email -> !email.isEmpty())
                .ifPresent(email -> facts.add(new Facts.Pair("E-mail", email)));
        facts.add(new Facts.Pair("From", kitchen.house().name()));
        facts.add(new Facts.Pair("Deliver on", DAY.format(order.deliver())));
        order.orderBy().ifPresent(moment -> facts.add(new Facts.Pair("Order by", MOMENT.format(moment))));
        facts.add(new Facts.Pair("Written", MOMENT.format(ZonedDateTime.now(kitchen.clock()))));
        return facts;
    }

    private Optional<Supplier> supplier(String id) {
        return neighbours.catalogue().map(catalogue -> catalogue.suppliers().get(id));
    }

    private Grid humanGrid(SupplierOrder order) {
        List<Column> columns = List.of(
                new Column("Article", 3, false),
                new Column("Item", 7, false),
                new Column("Packs", 2, true),
                new Column("Pack", 4, false),
                new Column("In all", 3, true),
                new Column("Price", 3, true),
                new Column("Amount", 3, true));
        List<List<String>> rows = new ArrayList<>();
        for (OrderLine line : order.lines()) {
            rows.add(List.of(
                    line.code(),
                    neighbours.itemName(line.item()),
                    String.valueOf(line.packs()),
                    line.pack().toString(),
                    inAll(line),
                    line.packPrice().rounded().toString(),
                    line.amount().toString()));
        }
        return new Grid(columns, rows, List.of());
    }

    private String inAll(OrderLine line) {
        return QuantityText.format(
                line.pack().total().times(Ratio.of(line.packs())),
                kitchen.house().measures());
    }

    private static List<Facts.Pair> totals(SupplierOrder order) {
        List<Facts.Pair> totals = new ArrayList<>();
        totals.add(new Facts.Pair("Goods", shown(order.goods())));
        if (!order.fee().isZero()) {
            totals.add(new Facts.Pair("Delivery", shown(order.fee())));
        }
        totals.add(new Facts.Pair("Total", shown(order.goods().plus(order.fee()))));
        return totals;
    }

    private static String shown(Money money) {
        return money + " " + money.currency().getCurrencyCode();
    }
}
