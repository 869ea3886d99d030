package etamine.catalogue.internal;

import etamine.base.verb.Report;
import etamine.base.verb.TextTable;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbUsage;
import etamine.catalogue.SupplierBook;
import etamine.kitchen.supply.CutOff;
import etamine.kitchen.supply.Delivery;
import etamine.kitchen.supply.Supplier;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** {@code suppliers}: who delivers when, and what can still be ordered. */
@Component
public final class SuppliersVerb implements Verb {
    private final SupplierBook book;

    /** Lists that book. */
    @Activate
    public SuppliersVerb(@Reference SupplierBook book) {
        this.book = book;
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of("suppliers", "List suppliers with their next delivery and its cut-off.");
    }

    @Override
    public Report run(VerbCall call) {
        TextTable table = new TextTable("Supplier", "Name", "Delivers", ">Minimum", ">Fee", "Next", "Order by");
        List<Map<String, Object>> json = new ArrayList<>();
        for (Supplier supplier : book.suppliers().values()) {
            Optional<Delivery> next = book.next(supplier.id());
            json.add(json(supplier, next));
            table.row(
                    supplier.id(),
                    supplier.name(),
                    String.join(" ", days(supplier)),
                    supplier.minimum().toString(),
                    supplier.fee().toString(),
                    next.map(delivery -> delivery.day().toString()).orElse("none"),
                    next.map(SuppliersVerb::orderBy).orElse(""));
        }
        return Report.done(Map.of("suppliers", json), table.lines());
    }

    private static String orderBy(Delivery delivery) {
        return delivery.orderBy().toLocalDate() + " " + delivery.orderBy().toLocalTime();
    }

    private static List<String> days(Supplier supplier) {
        return supplier.deliveryDays().stream().sorted().map(SupplierForm::code).collect(Collectors.toList());
    }

    private static Map<String, Object> json(Supplier supplier, Optional<Delivery> next) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", supplier.id());
        json.put("name", supplier.name());
        json.put("email", supplier.email());
        json.put("deliveryDays", days(supplier));
        supplier.cutOff().ifPresent(cutOff -> json.put("cutOff", json(cutOff)));
        json.put("minimum", supplier.minimum().toString());
        json.put("fee", supplier.fee().toString());
        next.ifPresent(delivery -> {
            json.put("nextDelivery", delivery.day().toString());
            json.put("orderBy", delivery.orderBy().toOffsetDateTime().toString());
        });
        return json;
    }

    private static Map<String, Object> json(CutOff cutOff) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("daysBefore", cutOff.daysBefore());
        json.put("time", cutOff.time().toString());
        return json;
    }
}
