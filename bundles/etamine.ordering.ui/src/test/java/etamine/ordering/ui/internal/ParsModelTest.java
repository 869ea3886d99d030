package etamine.ordering.ui.internal;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.kitchen.item.Allergens;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.Items;
import etamine.kitchen.par.Par;
import etamine.measures.Quantity;
import etamine.measures.Unit;
import etamine.ordering.ParBook;
import etamine.testing.SetKitchen;
import etamine.widgets.Choice;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class ParsModelTest {
    private static final Item CREAM = new Item(
            "cream",
            "Cream",
            "",
            false,
            "",
            Optional.empty(),
            Unit.L,
            List.of(),
            List.of(),
            Allergens.unknown(),
            Optional.empty());

    private final SetPars pars = new SetPars();
    private final ParsModel model = new ParsModel(
            pars, new Around(SetKitchen.at("2026-11-26T19:50:00Z"), () -> Optional.of(new OneItem()), Optional::empty));

    @Test
    void listsParsByNameWithTheirWeekdays() {
        model.save(new Par("salt", Quantity.parse("1 kg"), Map.of(), Optional.empty(), Optional.empty()));
        model.save(cream("8 l", "12 l"));

        List<ParRow> rows = model.rows();

        assertThat(rows).extracting(ParRow::name).containsExactly("Cream", "salt");
        assertThat(rows.get(0).level()).isEqualTo("8 l");
        assertThat(rows.get(0).on(DayOfWeek.FRIDAY)).isEqualTo("12 l");
        assertThat(rows.get(0).on(DayOfWeek.MONDAY)).isEmpty();
        assertThat(model.around().itemChoices()).containsExactly(new Choice("cream", "Cream"));
    }

    @Test
    void sortsLevelsBySizeAndNotByTheirText() {
        List<ParRow> rows = List.of("900 g", "12 l", "1 kg", "2 ea", "8 l").stream()
                .map(level -> new ParRow(
                        level, new Par(level, Quantity.parse(level), Map.of(), Optional.empty(), Optional.empty())))
                .sorted(ParRow.by(row -> Optional.of(row.par().par())))
                .toList();

        assertThat(rows).extracting(ParRow::name).containsExactly("900 g", "1 kg", "8 l", "12 l", "2 ea");
    }

    @Test
    void saysWhichLevelDoesNotFitTheItem() {
        assertThat(model.problem(cream("8 l", "12 l"))).isEmpty();
        assertThat(model.problem(cream("8 l", "12 ea"))).isPresent();
        assertThat(model.problem(cream("8 kg", "12 l"))).isPresent();
    }

    @Test
    void removesAPar() {
        model.save(cream("8 l", "12 l"));
        model.remove("cream");

        assertThat(model.find("cream")).isEmpty();
    }

    private static Par cream(String level, String friday) {
        return new Par(
                "cream",
                Quantity.parse(level),
                Map.of(DayOfWeek.FRIDAY, Quantity.parse(friday)),
                Optional.empty(),
                Optional.empty());
    }

    private static final class SetPars implements ParBook {
        private final Map<String, Par> all = new TreeMap<>();

        @Override
        public Map<String, Par> all() {
            return all;
        }

        @Override
        public void set(Par par) {
            all.put(par.item(), par);
        }

        @Override
        public void remove(String item) {
            all.remove(item);
        }
    }

    private static final class OneItem implements Items {
        @Override
        public Optional<Item> find(String id) {
            return Optional.ofNullable(all().get(id));
        }

        @Override
        public Map<String, Item> all() {
            return Map.of("cream", CREAM);
        }
    }
}
