package etamine.catalogue.internal;

import etamine.base.verb.Outcome;
import etamine.base.verb.Report;
import etamine.base.verb.TextTable;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.supply.Offer;
import etamine.measures.Quantity;
import etamine.measures.UnitPrice;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** {@code offers}: what can be bought today, the cheapest per unit first. */
@Component
public final class OffersVerb implements Verb {
    private final LiveCatalogue catalogue;
    private final Kitchen kitchen;

    /** Lists the offers that hold on the house's day. */
    @Activate
    public OffersVerb(@Reference LiveCatalogue catalogue, @Reference Kitchen kitchen) {
        this.catalogue = catalogue;
        this.kitchen = kitchen;
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of("offers", "List current offers; of one item the cheapest per unit first.", "[ITEM]");
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        TextTable table = new TextTable("Supplier", "Code", "Item", "Pack", ">Price", "Per", ">Per unit", "From");
        List<Map<String, Object>> json = new ArrayList<>();
        for (Offer offer : offers(call.arguments())) {
            json.add(json(offer));
            table.row(
                    offer.supplier(),
                    offer.code(),
                    catalogue.name(offer.item()),
                    offer.pack().toString(),
                    offer.amount().toPlainString(),
                    offer.per().map(Quantity::toString).orElse("pack"),
                    catalogue.unitPrice(offer).map(UnitPrice::toString).orElse("not known"),
                    offer.from().map(Object::toString).orElse(""));
        }
        return new Report(Outcome.DONE, Map.of("offers", json), table.lines());
    }

    private List<Offer> offers(List<String> arguments) throws VerbException {
        if (arguments.isEmpty()) {
            return catalogue.offers(kitchen.today());
        }
        String item = arguments.get(0);
        List<Offer> offers = catalogue.offersFor(item, kitchen.today());
        if (offers.isEmpty()
                && catalogue.items().isPresent()
                && catalogue.item(item).isEmpty()) {
            throw VerbException.rejected("There is no item “" + item + "”; look for its id in the ingredients.");
        }
        return offers;
    }

    private Map<String, Object> json(Offer offer) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", OfferForm.id(offer));
        json.put("supplier", offer.supplier());
        json.put("item", offer.item());
        json.put("code", offer.code());
        json.put("pack", offer.pack().toString());
        catalogue.content(offer).ifPresent(content -> json.put("content", content.toString()));
        json.put("amount", offer.amount().toPlainString());
        offer.per().ifPresent(per -> json.put("per", per.toString()));
        catalogue
                .packPrice(offer, 1)
                .ifPresent(price -> json.put("packPrice", price.rounded().toString()));
        catalogue
                .unitPrice(offer)
                .ifPresent(price -> json.put(
                        "unitPrice",
                        Map.of(
                                "amount",
                                price.amount().toPlainString(),
                                "per",
                                price.per().toString())));
        offer.from().ifPresent(from -> json.put("from", from.toString()));
        return json;
    }
}
