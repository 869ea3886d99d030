package etamine.ordering.internal;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.kitchen.exchange.EntryReader;
import etamine.kitchen.exchange.EntryTroubles;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.order.OrderLine;
import etamine.kitchen.order.OrderState;
import etamine.kitchen.order.SupplierOrder;
import etamine.measures.Money;
import etamine.measures.Pack;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * An order as a document. It names its own currency, so that it stays what was agreed when the house changes its own.
 */
final class OrderForm {
    private static final String WHY = "why";

    private final Kitchen kitchen;

    OrderForm(Kitchen kitchen) {
        this.kitchen = kitchen;
    }

    SupplierOrder read(ObjectNode node) {
        EntryReader reader = new EntryReader(node);
        String id = reader.needed("id");
        String supplier = reader.needed("supplier");
        OrderState state = reader.choice("state", OrderState.class).orElse(OrderState.DRAFT);
        Currency currency = currency(reader);
        Optional<LocalDate> deliver = date(reader);
        Optional<ZonedDateTime> orderBy = orderBy(reader);
        List<OrderLine> lines = new ArrayList<>();
        List<EntryReader> each = reader.each("lines");
        for (int i = 0; i < each.size(); i++) {
            line(each.get(i), node.path("lines").path(i).path(WHY), currency).ifPresent(lines::add);
        }
        Money fee = new Money(reader.decimal("fee").orElse(BigDecimal.ZERO), currency);
        EntryTroubles.throwIfAny(reader);
        return new SupplierOrder(
                id, supplier, deliver.orElseThrow(), orderBy, state, lines, goods(lines, currency), fee);
    }

    static Money goods(List<OrderLine> lines, Currency currency) {
        Money goods = Money.zero(currency);
        for (OrderLine line : lines) {
            goods = goods.plus(line.amount());
        }
        return goods;
    }

    private Currency currency(EntryReader reader) {
        String code = reader.text("currency");
        try {
            return code.isEmpty() ? kitchen.house().currency() : Currency.getInstance(code);
        } catch (IllegalArgumentException unknown) {
            reader.trouble("currency", "“" + code + "” is no currency; write three letters such as EUR.");
            return kitchen.house().currency();
        }
    }

    private static Optional<LocalDate> date(EntryReader reader) {
        String text = reader.needed("deliver");
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeException wrong) {
            reader.trouble("deliver", "“" + text + "” is not a date; write it as 2026-11-27.");
            return Optional.empty();
        }
    }

    private Optional<ZonedDateTime> orderBy(EntryReader reader) {
        String text = reader.text("orderBy");
        try {
            return text.isEmpty()
                    ? Optional.empty()
                    : Optional.of(OffsetDateTime.parse(text)
                            .atZoneSameInstant(kitchen.house().zone()));
        } catch (DateTimeException wrong) {
            reader.trouble("orderBy", "“" + text + "” is not a moment; write it as 2026-11-26T22:00:00Z.");
            return Optional.empty();
        }
    }

    private static Optional<OrderLine> line(EntryReader reader, JsonNode why, Currency currency) {
        String item = reader.needed("item");
        long packs = reader.whole("packs", 0);
        if (packs <= 0) {
            reader.trouble("packs", "Write the number of packs, 1 or more.");
        }
        Optional<Pack> pack = pack(reader);
        Optional<BigDecimal> packPrice = reader.decimal("packPrice");
        Optional<BigDecimal> amount = reader.decimal("amount");
        if (pack.isEmpty() || packPrice.isEmpty() || amount.isEmpty()) {
            reader.trouble("", "Write pack, packPrice and amount.");
            return Optional.empty();
        }
        return Optional.of(new OrderLine(
                item,
                reader.text("code"),
                packs,
                pack.get(),
                new Money(packPrice.get(), currency),
                new Money(amount.get(), currency),
                sentences(why)));
    }

    private static List<String> sentences(JsonNode why) {
        List<String> sentences = new ArrayList<>();
        why.forEach(node -> sentences.add(node.asText()));
        return sentences;
    }

    private static Optional<Pack> pack(EntryReader reader) {
        try {
            return Optional.of(Pack.parse(reader.needed("pack")));
        } catch (IllegalArgumentException wrong) {
            reader.trouble("pack", wrong.getMessage());
            return Optional.empty();
        }
    }

    /** The document with the order in it; members that say something else stay. */
    static ObjectNode write(ObjectNode node, SupplierOrder order) {
        node.put("id", order.id())
                .put("supplier", order.supplier())
                .put("deliver", order.deliver().toString());
        order.orderBy().ifPresent(moment -> node.put("orderBy", DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(moment)));
        node.put("state", order.state().name().toLowerCase(Locale.ROOT));
        node.put("currency", order.goods().currency().getCurrencyCode());
        node.put("fee", order.fee().toString());
        ArrayNode lines = node.putArray("lines");
        order.lines().forEach(line -> write(lines.addObject(), line));
        return node;
    }

    private static void write(ObjectNode node, OrderLine line) {
        node.put("item", line.item()).put("code", line.code()).put("packs", line.packs());
        node.put("pack", line.pack().toString());
        node.put("packPrice", line.packPrice().toString())
                .put("amount", line.amount().toString());
        ArrayNode why = node.putArray(WHY);
        line.why().forEach(why::add);
    }
}
