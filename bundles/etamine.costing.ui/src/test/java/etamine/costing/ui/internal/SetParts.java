package etamine.costing.ui.internal;

import etamine.base.Explanation;
import etamine.costing.ButcherSheet;
import etamine.costing.ButcherTests;
import etamine.costing.CostHistory;
import etamine.costing.CostRules;
import etamine.costing.CostSettings;
import etamine.costing.DatedCost;
import etamine.costing.DatedPrice;
import etamine.costing.Days;
import etamine.costing.Experiment;
import etamine.costing.Experiments;
import etamine.costing.MenuAnalysis;
import etamine.costing.MenuReport;
import etamine.costing.Moved;
import etamine.costing.PriceAdvice;
import etamine.costing.PriceQuestion;
import etamine.costing.PriceRounding;
import etamine.costing.PriceTarget;
import etamine.costing.Pricing;
import etamine.costing.Statement;
import etamine.costing.Statements;
import etamine.costing.Trial;
import etamine.costing.WeekCost;
import etamine.kitchen.cost.Costs;
import etamine.kitchen.cost.ItemCost;
import etamine.kitchen.cost.PlateCost;
import etamine.kitchen.cost.RecipeCost;
import etamine.kitchen.recipe.Basis;
import etamine.kitchen.recipe.Kind;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.MenuPrice;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Recipes;
import etamine.kitchen.recipe.Requirement;
import etamine.kitchen.recipe.Use;
import etamine.measures.Money;
import etamine.measures.Quantity;
import etamine.measures.Unit;
import etamine.measures.UnitPrice;
import etamine.testing.GivenItems;
import etamine.testing.SetKitchen;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** A costing module whose answers a test sets. Tart: 2.00 of a net price of 10.00; soup: 1.00 of 5.00. */
final class SetParts {
    static final Currency EUR = Currency.getInstance("EUR");
    final Map<String, RecipeCost> costs = new TreeMap<>();
    final Map<String, Recipe> recipes = new TreeMap<>();
    final List<Experiment> accepted = new ArrayList<>();
    CostRules rules = CostRules.unset();
    Moved moved = new Moved(LocalDate.EPOCH, List.of(), List.of());
    List<DatedPrice> prices = List.of();

    SetParts() {
        plate("tart", "10.00", "2.00", "cream", "1.50", "flour", "0.50");
        plate("soup", "5.00", "1.00", "leek", "1.00");
    }

    static Money money(String amount) {
        return Money.of(amount, EUR);
    }

    /** A plate of one portion that takes 100 g of each of these at these costs. */
    void plate(String id, String net, String cost, String... lines) {
        List<RecipeCost.Line> made = new ArrayList<>();
        List<Use> uses = new ArrayList<>();
        for (int at = 0; at < lines.length; at += 2) {
            Quantity quantity = Quantity.parse("100 g");
            uses.add(new Use(lines[at], quantity, Optional.empty(), Basis.AP));
            made.add(new RecipeCost.Line(
                    lines[at],
                    quantity,
                    Optional.empty(),
                    Optional.of(quantity),
                    Optional.of(UnitPrice.of("10.00", "1 kg")),
                    Optional.of(money(lines[at + 1])),
                    "written price"));
        }
        costs.put(
                id,
                new RecipeCost(
                        id,
                        money(cost),
                        List.of(),
                        Optional.of(money(cost)),
                        Optional.of(plateCost(cost, net)),
                        List.of(),
                        List.of(),
                        made));
        MenuPrice menu =
                new MenuPrice(new BigDecimal(net).multiply(new BigDecimal("1.10")), BigDecimal.TEN, BigDecimal.ZERO);
        List<Make> makes = List.of(new Make(id, Quantity.of(1, Unit.PORTION), Optional.empty()));
        recipes.put(id, recipe(id, uses, makes, menu));
    }

    private static Recipe recipe(String id, List<Use> uses, List<Make> makes, MenuPrice menu) {
        String name = id.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + id.substring(1);
        return new Recipe(
                id,
                name,
                Kind.PLATE,
                uses,
                makes,
                Optional.empty(),
                Optional.empty(),
                0,
                List.of(),
                Optional.of(menu),
                "");
    }

    static PlateCost plateCost(String cost, String net) {
        BigDecimal percent =
                new BigDecimal(cost).movePointRight(2).divide(new BigDecimal(net), 2, RoundingMode.HALF_UP);
        return new PlateCost(
                money(cost), money(net), Optional.of(percent), money(net).minus(money(cost)));
    }

    CostingParts parts() {
        GivenItems items =
                new GivenItems().with("cream", Unit.L).with("flour", Unit.KG).with("leek", Unit.KG);
        return new CostingParts(
                costs(),
                items,
                SetKitchen.at("2026-11-24T09:00:00Z"),
                settings(),
                experiments(),
                history(),
                pricing(),
                menu(),
                statements(),
                butcher(),
                Optional::empty,
                () -> Optional.of(recipes()));
    }

    private Costs costs() {
        return new Costs() {
            @Override
            public Optional<RecipeCost> recipe(String id) {
                return Optional.ofNullable(costs.get(id));
            }

            @Override
            public Map<String, RecipeCost> recipes() {
                return costs;
            }

            @Override
            public Optional<ItemCost> item(String id) {
                return id.equals("cream")
                        ? Optional.of(new ItemCost(id, UnitPrice.of("4.10", "1 l"), true, "offer D-104"))
                        : Optional.empty();
            }

            @Override
            public Optional<Explanation> explain(String recipe) {
                return Optional.of(Explanation.leaf(recipe, "", ""));
            }
        };
    }

    private CostSettings settings() {
        return new CostSettings() {
            @Override
            public CostRules rules() {
                return rules;
            }

            @Override
            public void change(CostRules other) {
                rules = other;
            }

            @Override
            public List<Source> sources() {
                return List.of(new Source("offer", "current offer"), new Source("written", "written price"));
            }
        };
    }

    /** Every experiment makes the tart 0.30 dearer, as long as it is not empty. */
    private Experiments experiments() {
        return new Experiments() {
            @Override
            public Trial reckon(Experiment experiment) {
                PlateCost tart = plateCost("2.00", "10.00");
                PlateCost soup = plateCost("1.00", "5.00");
                PlateCost dearer = experiment.isEmpty() ? tart : plateCost("2.30", "10.00");
                return new Trial(
                        List.of(
                                new Trial.Plate("soup", soup, soup, false),
                                new Trial.Plate("tart", tart, dearer, false)),
                        List.of());
            }

            @Override
            public List<String> accept(Experiment experiment) {
                accepted.add(experiment);
                return List.of();
            }
        };
    }

    private CostHistory history() {
        return new CostHistory() {
            @Override
            public Moved since(LocalDate day) {
                return moved;
            }

            @Override
            public List<DatedPrice> prices(String item) {
                return prices;
            }

            @Override
            public List<DatedCost> course(String recipe, int weeks) {
                return List.of();
            }
        };
    }

    /** Answers every question with a net price of 10.00. */
    private Pricing pricing() {
        return new Pricing() {
            @Override
            public PriceQuestion about(String recipe, PriceTarget target) {
                return new PriceQuestion(
                        Optional.of(recipe),
                        costs.get(recipe).plate().orElseThrow().cost(),
                        Optional.empty(),
                        BigDecimal.TEN,
                        true,
                        target,
                        PriceRounding.of(rules));
            }

            @Override
            public PriceAdvice advise(PriceQuestion question) {
                return new PriceAdvice(
                        question,
                        money("10.00"),
                        money("11.00"),
                        money("11.50"),
                        money("10.45"),
                        Optional.of(new BigDecimal("19.14")),
                        Optional.empty(),
                        money("8.45"),
                        false,
                        List.of(),
                        Explanation.leaf("Price", "11.50", ""));
            }
        };
    }

    private MenuAnalysis menu() {
        return new MenuAnalysis() {
            @Override
            public MenuReport report(Optional<Days> days, Comparison how, Set<String> only) {
                return new MenuReport(days, List.of(), List.of(), List.of());
            }

            @Override
            public Optional<Days> sold() {
                return Optional.empty();
            }
        };
    }

    private Statements statements() {
        return new Statements() {
            @Override
            public Statement of(Days days) {
                return new Statement(
                        days, Optional.empty(), Optional.empty(), List.of(), List.of(), Explanation.leaf("", "", ""));
            }

            @Override
            public List<WeekCost> weeks(LocalDate last, int weeks) {
                return List.of();
            }
        };
    }

    private ButcherTests butcher() {
        return new ButcherTests() {
            @Override
            public List<String> recipes() {
                return List.of();
            }

            @Override
            public ButcherSheet sheet(String recipe, Optional<UnitPrice> dealer, Optional<Quantity> portion) {
                throw new IllegalArgumentException("There is no recipe " + recipe + ".");
            }
        };
    }

    private Recipes recipes() {
        return new Recipes() {
            @Override
            public Map<String, Recipe> all() {
                return recipes;
            }

            @Override
            public Optional<Recipe> find(String id) {
                return Optional.ofNullable(recipes.get(id));
            }

            @Override
            public List<Recipe> inOrder() {
                return List.copyOf(recipes.values());
            }

            @Override
            public Optional<Recipe> maker(String item) {
                return Optional.ofNullable(recipes.get(item));
            }

            @Override
            public List<Recipe> usersOf(String item) {
                return List.of();
            }

            @Override
            public Requirement require(Map<String, Quantity> wanted, Map<String, Quantity> available) {
                return new Requirement(Map.of(), Map.of(), Map.of(), List.of());
            }
        };
    }
}
