package etamine.costing.internal.price;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import etamine.base.Progress;
import etamine.base.verb.Outcome;
import etamine.base.verb.Report;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.costing.Experiment;
import etamine.costing.Experiments;
import etamine.costing.Trial;
import etamine.costing.internal.larder.Larder;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class PriceVerbTest {
    private final Larder larder = new Larder()
            .bought("cream", "4.00", "1 l")
            .recipe("soup")
            .uses("0.5 l", "cream")
            .makes("1 portion", "soup")
            .sold("5.00", "0", "0")
            .done();
    private final Written written = new Written();

    /** Remembers what it was told to write. */
    private static final class Written implements Experiments {
        private final List<Map<String, BigDecimal>> prices = new ArrayList<>();

        @Override
        public Trial reckon(Experiment experiment) {
            throw new AssertionError("a price is written, not tried");
        }

        @Override
        public List<String> accept(Experiment experiment) {
            prices.add(experiment.menuPrices());
            return List.of();
        }
    }

    private Report run(List<String> arguments, Map<String, String> options) throws VerbException {
        TargetPricing pricing = new TargetPricing(larder.costs(), larder.itemList, larder.settings);
        pricing.recipes = larder.recipeList;
        return new PriceVerb(pricing, larder.settings, larder, written)
                .run(new VerbCall(arguments, options, "", Path.of(""), Progress.unseen()));
    }

    @Test
    void writesTheRoundedPriceOnTheMenuOnlyWhenToldTo() throws VerbException {
        // Cream for 2.00 at 28 % is 7.142..., to the nearest cent 7.14.
        Report proposed = run(List.of("soup"), Map.of("--food-cost", "28", "--round", "nearest"));
        assertThat(proposed.json()).asString().contains("accepted=false");
        assertThat(written.prices).isEmpty();

        Report report = run(List.of("soup"), Map.of("--food-cost", "28", "--round", "nearest", "--accept", ""));

        assertThat(report.outcome()).isEqualTo(Outcome.DONE);
        assertThat(report.json()).asString().contains("rounded=7.14", "accepted=true");
        assertThat(written.prices).containsExactly(Map.of("soup", new BigDecimal("7.14")));
    }

    @Test
    void refusesToWriteAPriceThatIsNotOfTheRecipeAsItIs() {
        for (Map<String, String> options : List.of(
                Map.of("--food-cost", "28", "--accept", "", "--cost", "3"),
                Map.of("--food-cost", "28", "--accept", "", "--tax-out", ""))) {
            assertThatThrownBy(() -> run(List.of("soup"), options))
                    .isInstanceOf(VerbException.class)
                    .hasMessageContaining("name one, without --cost and --tax-out");
        }
        assertThat(written.prices).isEmpty();
    }
}
