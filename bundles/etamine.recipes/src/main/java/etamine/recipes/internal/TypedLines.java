package etamine.recipes.internal;

import etamine.kitchen.item.Item;
import etamine.kitchen.item.Items;
import etamine.kitchen.recipe.Basis;
import etamine.kitchen.recipe.Use;
import etamine.measures.MeasureException;
import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import etamine.measures.Unit;
import etamine.recipes.UseLines;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Reads lines by trying where the amount could end and asking the items which rest is a name. */
@Component
public final class TypedLines implements UseLines {
    private static final int LONGEST = 300;

    private final KnownItems known;
    private final MadeItems made;
    private volatile ItemNames latest = new ItemNames(Map.of());

    /** Lines about those items. */
    @Activate
    public TypedLines(@Reference KnownItems known, @Reference MadeItems made) {
        this.known = known;
        this.made = made;
    }

    @Override
    public Reading read(String text) {
        String line = text.strip().replaceAll("\\s+", " ");
        if (line.isEmpty() || line.length() > LONGEST) {
            return new Reading.Unclear("Write an amount and an item, such as 250 g butter.");
        }
        Optional<Basis> basis = basis(line);
        String bare = basis.isPresent() ? line.substring(0, line.length() - 3).strip() : line;
        String[] words = bare.split(" ");
        for (int amount = Math.min(words.length - 1, 6); amount >= 0; amount--) {
            String rest = join(words, amount, words.length);
            Optional<ItemNames.Named> named = names().at(rest);
            if (named.isPresent()) {
                return use(join(words, 0, amount), named.get(), basis);
            }
        }
        return new Reading.Unclear(unknown(words));
    }

    @Override
    public List<Pasted> readAll(String text) {
        return PastedList.of(text, this::read);
    }

    private static Optional<Basis> basis(String line) {
        return Stream.of(Basis.values())
                .filter(basis -> line.toUpperCase(Locale.ROOT).endsWith(" " + basis.name()))
                .findFirst();
    }

    private Reading use(String amount, ItemNames.Named named, Optional<Basis> basis) {
        Item item = named.item();
        Optional<String> as = named.preparation();
        if (as.isPresent() && item.preparation(as.get()).isEmpty()) {
            return new Reading.Unclear(RecipeRules.unknownPreparation(item, as.get()));
        }
        try {
            Quantity quantity = amount(amount, item);
            if (quantity.signum() <= 0) {
                return new Reading.Unclear("Write more than zero of " + item.name() + ".");
            }
            return new Reading.Clear(
                    new Use(item.id(), quantity, as, basis.orElse(as.isPresent() ? Basis.EP : Basis.AP)), List.of());
        } catch (MeasureException unreadable) {
            return new Reading.Unclear(unreadable.getMessage());
        }
    }

    private static Quantity amount(String text, Item item) {
        if (text.isEmpty()) {
            throw new MeasureException("Write how much " + item.name() + ", such as 250 g.");
        }
        return text.matches("[0-9½⅓⅔¼¾⅛ ./]+") ? QuantityText.parse(text + " ea") : QuantityText.parse(text, own(item));
    }

    private static Set<Unit> own(Item item) {
        return Stream.concat(
                        item.measures().stream(),
                        item.preparations().stream().flatMap(each -> each.measures().stream()))
                .flatMap(measure -> Stream.of(measure.of().unit(), measure.is().unit()))
                .filter(unit -> unit.system() == Unit.System.OWN)
                .collect(Collectors.toSet());
    }

    private String unknown(String[] words) {
        String last = words[words.length - 1];
        List<String> near = names().like(last, 3);
        return near.isEmpty()
                ? "No item is called that; add it to the ingredients first, or write the recipe that makes it."
                : "No item is called exactly that; did you mean " + String.join(" or ", near) + "?";
    }

    @Override
    public String write(Use use) {
        Optional<Item> item = names().find(use.item());
        StringBuilder line = new StringBuilder(QuantityText.formatExact(use.quantity()))
                .append(' ')
                .append(item.filter(known -> names().at(known.name())
                                .filter(named -> named.item().id().equals(use.item()))
                                .isPresent())
                        .map(Item::name)
                        .orElse(use.item()));
        use.as().ifPresent(as -> line.append(", ").append(as));
        boolean usual = use.basis() == (use.as().isPresent() ? Basis.EP : Basis.AP);
        return usual ? line.toString() : line + " " + use.basis();
    }

    @Override
    public List<String> complete(String text, int atMost) {
        String line = text.stripLeading();
        Set<String> lines = new LinkedHashSet<>();
        String[] words = line.split(" ");
        for (int amount = Math.min(words.length - 1, 6); amount >= 1 && lines.isEmpty(); amount--) {
            String start = join(words, 0, amount);
            String rest = join(words, amount, words.length);
            names().completions(rest).limit(atMost).forEach(name -> lines.add(start + " " + name));
        }
        return lines.stream().limit(atMost).toList();
    }

    private ItemNames names() {
        Map<String, Item> all = known.items().map(Items::all).orElseGet(made::items);
        ItemNames now = latest;
        if (!now.areOf(all)) {
            now = new ItemNames(all);
            latest = now;
        }
        return now;
    }

    private static String join(String[] words, int from, int to) {
        return String.join(" ", List.of(words).subList(from, to));
    }
}
