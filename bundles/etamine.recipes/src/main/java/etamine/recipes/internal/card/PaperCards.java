package etamine.recipes.internal.card;

import etamine.base.Printout;
import etamine.documents.Block;
import etamine.documents.Documents;
import etamine.documents.Paper;
import etamine.kitchen.allergen.DeclarationList;
import etamine.kitchen.house.House;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.recipe.Kind;
import etamine.kitchen.recipe.Recipe;
import etamine.measures.MeasureStyle;
import etamine.recipes.AllergenRollUp;
import etamine.recipes.Cards;
import etamine.recipes.RecipePhotos;
import etamine.recipes.Rolled;
import etamine.recipes.Scaled;
import etamine.recipes.Scaling;
import etamine.recipes.internal.ItemView;
import etamine.recipes.internal.KnownItems;
import etamine.recipes.internal.MadeItems;
import etamine.recipes.internal.RecipeShelf;
import java.time.Clock;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/** Cards as papers. */
@Component
public final class PaperCards implements Cards {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);

    private final RecipeShelf shelf;
    private final KnownItems known;
    private final MadeItems made;
    private final Scaling scaling;
    private final AllergenRollUp rollUp;
    private final Documents documents;
    private volatile @Nullable Kitchen kitchen;
    private volatile @Nullable RecipePhotos photos;

    /** Cards of the recipes on that shelf. */
    @Activate
    public PaperCards(
            @Reference RecipeShelf shelf,
            @Reference KnownItems known,
            @Reference MadeItems made,
            @Reference Scaling scaling,
            @Reference AllergenRollUp rollUp,
            @Reference Documents documents) {
        this.shelf = shelf;
        this.known = known;
        this.made = made;
        this.scaling = scaling;
        this.rollUp = rollUp;
        this.documents = documents;
    }

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    void bindKitchen(Kitchen found) {
        kitchen = found;
    }

    void unbindKitchen(Kitchen gone) {
        if (kitchen == gone) {
            kitchen = null;
        }
    }

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    void bindPhotos(RecipePhotos found) {
        photos = found;
    }

    void unbindPhotos(RecipePhotos gone) {
        if (photos == gone) {
            photos = null;
        }
    }

    /** The photo of a recipe, if it is wanted; on a wall there is no room for one. */
    private Optional<Block> photo(Recipe recipe, Terms terms) {
        RecipePhotos now = photos;
        return now == null || !terms.photo() || terms.large()
                ? Optional.empty()
                : now.find(recipe.id()).map(found -> CardPhoto.of(recipe.name(), found));
    }

    private Optional<House> house() {
        return Optional.ofNullable(kitchen).map(Kitchen::house);
    }

    @Override
    public Terms usual() {
        boolean us =
                house().filter(house -> house.measures() == MeasureStyle.US).isPresent();
        return new Terms(us ? Sheet.LETTER : Sheet.A4, false, Optional.empty());
    }

    @Override
    public Card card(String id, Terms terms) {
        Recipe written = shelf.graph().recipes().get(id);
        if (written == null) {
            return new Card.Impossible("There is no recipe “" + id + "”; the verb recipes lists them all.");
        }
        if (terms.amount().isEmpty()) {
            return laid(written, Optional.empty(), terms);
        }
        Scaled scaled = scaling.to(id, terms.amount().get());
        return scaled instanceof Scaled.Batch batch
                ? laid(batch.recipe(), Optional.of(batch), terms)
                : new Card.Impossible(((Scaled.Impossible) scaled).text());
    }

    private Card laid(Recipe recipe, Optional<Scaled.Batch> scaled, Terms terms) {
        CardLines lines = new CardLines(scaling, ItemView.of(known, made));
        CardPaper card = new CardPaper(recipe, scaled, lines, this::name);
        DeclarationList list = house().map(House::allergenList).orElse(DeclarationList.EU);
        String kind = recipe.kind() == Kind.PLATE ? "Plate card" : "Recipe card";
        String amount = terms.amount()
                .map(wanted -> " for " + lines.measured(wanted) + ", "
                        + ScaledBy.times(scaled.orElseThrow().factor()))
                .orElse("");
        Paper paper = new Paper(
                recipe.name(),
                kind + amount,
                card.blocks(new CardAllergens(list, rollUp.why(recipe)).block(), photo(recipe, terms)),
                "Revision " + shelf.revision(recipe.id()) + " of " + recipe.id() + ", printed " + DAY.format(today())
                        + house().map(house -> ", " + house.name()).orElse(""),
                sheet(terms));
        return new Card.Laid(
                documents.printout(paper), scaled.map(Scaled.Batch::remarks).orElseGet(List::of));
    }

    private String name(String id) {
        return Optional.ofNullable(shelf.graph().recipes().get(id))
                .map(Recipe::name)
                .orElse(id);
    }

    @Override
    public Printout allergens(DeclarationList list, Terms terms) {
        Map<String, Rolled> all = rollUp.recipes();
        List<Rolled> plates = shelf.graph().recipes().values().stream()
                .filter(recipe -> !recipe.standing().archived())
                .filter(recipe -> recipe.kind() == Kind.PLATE || recipe.kind() == Kind.DRINK)
                .sorted(Comparator.comparing(Recipe::kind).thenComparing(Recipe::name, String.CASE_INSENSITIVE_ORDER))
                .flatMap(recipe -> Optional.ofNullable(all.get(recipe.id())).stream())
                .toList();
        return documents.printout(new Paper(
                "Allergens of the menu",
                house().map(house -> house.name() + ", ").orElse("") + DAY.format(today()) + ", " + list.title(),
                new AllergenMatrix(list, plates).blocks(),
                "As written in the book on " + DAY.format(today()) + "; ask in the kitchen when in doubt.",
                sheet(terms).across()));
    }

    private static Paper.Sheet sheet(Terms terms) {
        Paper.Size size = terms.sheet() == Sheet.A4 ? Paper.Size.A4 : Paper.Size.LETTER;
        return Paper.Sheet.of(size).in(terms.large() ? Paper.Print.LARGE : Paper.Print.NORMAL);
    }

    private LocalDate today() {
        Kitchen now = kitchen;
        return now == null ? LocalDate.now(Clock.systemDefaultZone()) : now.today();
    }
}
