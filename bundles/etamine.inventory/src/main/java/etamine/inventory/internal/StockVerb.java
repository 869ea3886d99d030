package etamine.inventory.internal;

import etamine.base.verb.Report;
import etamine.base.verb.TextTable;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.inventory.StockLine;
import etamine.inventory.Stockroom;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.stock.Lot;
import etamine.measures.Money;
import etamine.measures.Quantity;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** {@code stock}: on hand against par, now or at an instant. */
@Component
public final class StockVerb implements Verb {
    private final Stockroom stockroom;
    private final Kitchen kitchen;

    /** Reports on that stockroom. */
    @Activate
    public StockVerb(@Reference Stockroom stockroom, @Reference Kitchen kitchen) {
        this.stockroom = stockroom;
        this.kitchen = kitchen;
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of("stock", "Show what is on hand against par.")
                .with("--at", "INSTANT", "as it was then, such as 2026-11-20T18:00:00Z or 2026-11-20");
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        Optional<String> at = call.option("--at");
        List<StockLine> lines = at.isPresent() ? past(at.get()) : stockroom.lines(kitchen.today());
        TextTable table =
                new TextTable("Item", ">On hand", ">On order", ">Par", ">Short", ">Value", "Next use-by", "Valued by");
        List<Map<String, Object>> json = new ArrayList<>();
        Money total = Money.zero(kitchen.house().currency());
        for (StockLine line : lines) {
            json.add(json(line));
            total = total.plus(line.value().orElse(Money.zero(total.currency())));
            table.row(
                    line.name(),
                    line.onHand().toString(),
                    line.onOrder().isZero() ? "" : line.onOrder().toString(),
                    line.par().map(Quantity::toString).orElse(""),
                    line.shortBy()
                            .filter(missing -> !missing.isZero())
                            .map(Quantity::toString)
                            .orElse(""),
                    line.value().map(value -> value.rounded().toString()).orElse("?"),
                    line.nextUseBy().map(LocalDate::toString).orElse(""),
                    line.valuedBy());
        }
        Map<String, Object> result = new LinkedHashMap<>();
        result.put("items", json);
        result.put("totalValue", total.rounded().toString());
        List<String> text = new ArrayList<>(table.lines());
        text.add("Total value " + total.rounded() + " " + total.currency());
        return Report.done(result, text);
    }

    private List<StockLine> past(String text) throws VerbException {
        ZoneId zone = kitchen.house().zone();
        Instant at = instant(text, zone);
        return stockroom.lines(at.atZone(zone).toLocalDate(), at);
    }

    private static Instant instant(String text, ZoneId zone) throws VerbException {
        try {
            if (text.length() == "2026-11-20".length()) {
                return LocalDate.parse(text)
                        .plusDays(1)
                        .atStartOfDay(zone)
                        .toInstant()
                        .minusMillis(1);
            }
            return text.endsWith("Z")
                    ? Instant.parse(text)
                    : LocalDateTime.parse(text).atZone(zone).toInstant();
        } catch (DateTimeException unreadable) {
            throw VerbException.wrongCall(
                    "“" + text + "” is not a moment; write one such as 2026-11-20T18:00:00Z, or a day.");
        }
    }

    private static Map<String, Object> json(StockLine line) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("item", line.item());
        json.put("onHand", line.onHand().toString());
        json.put("onOrder", line.onOrder().toString());
        line.par().ifPresent(par -> json.put("par", par.toString()));
        line.shortBy().ifPresent(missing -> json.put("short", missing.toString()));
        line.value().ifPresent(value -> json.put("value", value.rounded().toString()));
        if (!line.valuedBy().isEmpty()) {
            json.put("valuedBy", line.valuedBy());
        }
        json.put("lots", line.lots().stream().map(StockVerb::json).toList());
        return json;
    }

    private static Map<String, Object> json(Lot lot) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("place", lot.place());
        if (!lot.lot().isEmpty()) {
            json.put("lot", lot.lot());
        }
        json.put("quantity", lot.quantity().toString());
        lot.useBy().ifPresent(day -> json.put("useBy", day.toString()));
        lot.unitCost().ifPresent(cost -> json.put("unitCost", MovementReport.price(cost)));
        return json;
    }
}
