package etamine.recipes.ui.internal;

import etamine.base.Printout;
import etamine.kitchen.allergen.DeclarationList;
import etamine.kitchen.house.House;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.recipe.Recipe;
import etamine.recipes.Cards;
import etamine.recipes.FoundRecipes;
import etamine.recipes.RecipeFiles;
import etamine.recipes.RecipeFiles.Taken;
import etamine.shell.BenchAction;
import etamine.shell.Frame;
import etamine.widgets.FilePick;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.eclipse.swt.SWT;
import org.jspecify.annotations.Nullable;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/** What the bench does with paper and with files of other programs; each while the service for it is there. */
@Component(service = Paperwork.class)
public final class Paperwork {
    private static final List<FilePick.Kind> WRITTEN = List.of(new FilePick.Kind("Recipes, JSON-LD", "jsonld"));
    private static final List<FilePick.Kind> READ = List.of(
            new FilePick.Kind("Recipes, JSON-LD", "jsonld"),
            new FilePick.Kind("JSON", "json"),
            new FilePick.Kind("Saved page", "html"));

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    private volatile @Nullable Cards cards;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    private volatile @Nullable RecipeFiles files;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    private volatile @Nullable Kitchen kitchen;

    /** Finds its services in the registry. */
    public Paperwork() {}

    Paperwork(@Nullable Cards cards, @Nullable RecipeFiles files) {
        this.cards = cards;
        this.files = files;
    }

    /**
     * What can be done with the recipe that is selected.
     *
     * @param selected the recipe
     */
    List<BenchAction> actions(Frame frame, Supplier<Optional<Recipe>> selected) {
        return List.of(
                BenchAction.of(
                                "card",
                                "Card\u2026",
                                "print",
                                () -> selected.get().ifPresent(each -> card(frame, each)))
                        .onKey(SWT.MOD1 | 'P')
                        .when(() -> cards != null && selected.get().isPresent()),
                BenchAction.of("import", "Import\u2026", "import", () -> pick(frame))
                        .when(() -> files != null),
                BenchAction.of("export", "Export\u2026", "export", () -> export(frame, selected.get()))
                        .when(() -> files != null));
    }

    private void card(Frame frame, Recipe recipe) {
        Cards now = cards;
        if (now != null) {
            new CardDialog(frame.window(), recipe.name(), now.usual())
                    .ask()
                    .ifPresent(wish -> layOut(frame, recipe, wish, now));
        }
    }

    /** Lays out what was asked for and hands it to the window. */
    void layOut(Frame frame, Recipe recipe, CardWish wish, Cards with) {
        frame.work("Laying out " + recipe.name(), progress -> with(with, recipe, wish), card -> {
            if (card instanceof Cards.Card.Laid laid) {
                hand(frame, laid.printout(), wish.print());
            } else {
                frame.warn(((Cards.Card.Impossible) card).text());
            }
        });
    }

    private Cards.Card with(Cards with, Recipe recipe, CardWish wish) {
        return wish.menu()
                ? new Cards.Card.Laid(with.allergens(list(), wish.terms()), List.of())
                : with.card(recipe.id(), wish.terms());
    }

    private DeclarationList list() {
        return Optional.ofNullable(kitchen)
                .map(Kitchen::house)
                .map(House::allergenList)
                .orElse(DeclarationList.EU);
    }

    private static void hand(Frame frame, Printout printout, boolean print) {
        if (print) {
            frame.print(printout);
        } else {
            frame.save(printout);
        }
    }

    private void export(Frame frame, Optional<Recipe> recipe) {
        RecipeFiles now = files;
        if (now == null) {
            return;
        }
        ExportWish.ask(frame.window(), recipe)
                .ifPresent(wish -> FilePick.save(frame.window(), "Export recipes", wish.name(), WRITTEN)
                        .ifPresent(file -> frame.work(
                                "Exporting " + wish.name(),
                                progress -> now.write(wish.ids(), file),
                                ids -> frame.say(ids.size() + (ids.size() == 1 ? " recipe was" : " recipes were")
                                        + " written to " + file + "."))));
    }

    private void pick(Frame frame) {
        FilePick.open(frame.window(), "Import recipes", READ).ifPresent(file -> read(frame, file));
    }

    /** Reads a file and shows what is in it; takes over what the person then chooses. */
    void read(Frame frame, Path file) {
        RecipeFiles now = files;
        if (now != null) {
            frame.work("Reading " + file.getFileName(), progress -> now.read(file, progress), found -> {
                ImportModel model = new ImportModel(found);
                if (found.recipes().isEmpty()) {
                    frame.warn(String.join(" ", found.problems()));
                } else if (new ImportDialog(frame.window(), model).ask()) {
                    take(frame, now, model);
                }
            });
        }
    }

    private static void take(Frame frame, RecipeFiles files, ImportModel model) {
        FoundRecipes found = model.found();
        frame.work(
                "Taking over recipes",
                progress -> files.take(found, model.chosen(), model.newIngredients(), progress),
                taken -> said(frame, taken));
    }

    private static void said(Frame frame, Taken taken) {
        if (taken.problems().isEmpty()) {
            frame.say(ImportModel.sentence(taken));
        } else {
            frame.warn("Nothing was taken over. " + String.join(" ", taken.problems()));
        }
    }
}
