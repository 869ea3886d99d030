package etamine.book.internal.verb;

import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.book.internal.HouseForm;
import etamine.kitchen.allergen.DeclarationList;
import etamine.kitchen.house.House;
import etamine.measures.MeasureStyle;
import java.time.ZoneId;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The settings of the house as options of a call.
 *
 * @param name given or not
 * @param currency given or not
 * @param zone given or not
 * @param measures given or not
 * @param allergens given or not
 */
record Settings(
        Optional<String> name,
        Optional<Currency> currency,
        Optional<ZoneId> zone,
        Optional<MeasureStyle> measures,
        Optional<DeclarationList> allergens) {

    static VerbUsage options(VerbUsage usage) {
        return usage.with("--name", "NAME", "the kitchen's name, as it stands on orders")
                .with("--currency", "CODE", "the currency of all prices, such as EUR")
                .with("--zone", "ZONE", "the time zone of its clock, such as Europe/Dublin")
                .with("--measures", "metric|us", "how quantities are shown")
                .with("--allergens", "LIST", "the list allergens are declared by: eu, us, fsanz, canada or codex");
    }

    static Settings of(VerbCall call) throws VerbException {
        try {
            return new Settings(
                    call.option("--name").filter(name -> !name.isBlank()),
                    call.option("--currency").map(HouseForm::currency),
                    call.option("--zone").map(HouseForm::zone),
                    call.option("--measures").map(HouseForm::style),
                    call.option("--allergens").map(DeclarationList::of));
        } catch (IllegalArgumentException e) {
            throw VerbException.wrongCall(String.valueOf(e.getMessage()));
        }
    }

    boolean given() {
        return name.isPresent()
                || currency.isPresent()
                || zone.isPresent()
                || measures.isPresent()
                || allergens.isPresent();
    }

    House over(House house) {
        return new House(
                name.orElse(house.name()),
                currency.orElse(house.currency()),
                zone.orElse(house.zone()),
                measures.orElse(house.measures()),
                allergens.orElse(house.allergenList()));
    }

    static Map<String, Object> json(String location, House house) {
        Map<String, Object> kitchen = new LinkedHashMap<>();
        kitchen.put("name", house.name());
        kitchen.put("currency", house.currency().getCurrencyCode());
        kitchen.put("zone", house.zone().getId());
        kitchen.put("measures", house.measures().name().toLowerCase(Locale.ROOT));
        kitchen.put("allergenList", house.allergenList().id());
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("book", location);
        json.put("kitchen", kitchen);
        return json;
    }

    static List<String> lines(String first, House house) {
        return List.of(
                first,
                house.name() + ", prices in " + house.currency() + ", clock of " + house.zone() + ", "
                        + (house.measures() == MeasureStyle.US ? "US" : "metric")
                        + " measures, allergens by the list of "
                        + house.allergenList().title() + ".");
    }
}
