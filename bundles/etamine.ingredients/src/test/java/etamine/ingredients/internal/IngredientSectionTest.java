package etamine.ingredients.internal;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.kitchen.item.Item;
import etamine.measures.Dimension;
import etamine.measures.Unit;
import java.time.Period;
import org.junit.jupiter.api.Test;

class IngredientSectionTest {
    private static final String CELERIAC = """
            [{"id": "celeriac", "name": "Celeriac", "group": "Vegetables", "storage": "chilled", "keeps": "P10D",
              "countIn": "kg", "shelf": {"row": 3, "weight": 1.50},
              "measures": [{"of": "1 ea", "is": "750 g"}],
              "preparations": [{"name": "peeled, large dice", "yield": "0.74", "knife": "long",
                                "measures": [{"of": "1 cup", "is": "156 g"}]}],
              "contains": ["celery"], "mayContain": [], "allergensKnown": true,
              "price": {"amount": "2.10", "per": "1 kg"}}]
            """;

    private final Pantry pantry = new Pantry();

    @Test
    void readsEveryMember() {
        pantry.load(CELERIAC);

        Item item = pantry.items.find("celeriac").orElseThrow();
        assertThat(item.name()).isEqualTo("Celeriac");
        assertThat(item.group()).isEqualTo("Vegetables");
        assertThat(item.storage()).isEqualTo("chilled");
        assertThat(item.keeps()).contains(Period.ofDays(10));
        assertThat(item.countIn()).isEqualTo(Unit.KG);
        assertThat(item.measures()).hasToString("[Equivalence[of=1 ea, is=750 g]]");
        assertThat(item.preparations().get(0).yield()).hasToString("0.74");
        assertThat(item.preparations().get(0).measures()).hasToString("[Equivalence[of=1 cup, is=156 g]]");
        assertThat(item.allergens().contains()).containsExactly("celery");
        assertThat(item.allergens().known()).isTrue();
        assertThat(item.writtenPrice()).map(Object::toString).contains("2.10 / 1 kg");
        assertThat(item.made()).isFalse();
    }

    @Test
    void dumpsWhatItLoadedIncludingUnknownMembers() {
        pantry.load(CELERIAC);

        assertThat(pantry.section.dump()).isEqualTo(Pantry.json(CELERIAC));
        assertThat(pantry.section.dump().toString()).contains("\"weight\":1.50");
    }

    @Test
    void dumpsNothingWhenThereIsNothing() {
        assertThat(pantry.section.dump().isMissingNode()).isTrue();
    }

    @Test
    void takesAllergensAsUnknownUnlessSaid() {
        pantry.load("[{\"id\": \"salt\", \"name\": \"Salt\"}]");

        assertThat(pantry.items.find("salt").orElseThrow().allergens().known()).isFalse();
    }

    @Test
    void countsInTheUnitOfThePriceUnlessSaid() {
        pantry.load("""
                [{"id": "cream", "name": "Cream", "price": {"amount": "4.10", "per": "1 l"}},
                 {"id": "salt", "name": "Salt"}]
                """);

        assertThat(pantry.items.find("cream").orElseThrow().dimension()).isEqualTo(Dimension.VOLUME);
        assertThat(pantry.items.find("salt").orElseThrow().countIn()).isEqualTo(Unit.KG);
    }

    @Test
    void countsAWordOfItsOwnInWhatTheWordMeasures() {
        pantry.load("""
                [{"id": "parsley", "name": "Parsley", "countIn": "bunch", "measures": [{"of": "1 bunch", "is": "60 g"}]}]
                """);

        assertThat(pantry.items.find("parsley").orElseThrow().countIn()).isEqualTo(Unit.G);
    }

    @Test
    void namesEachTroubleWithItsPointer() {
        assertThat(pantry.troubles("""
                [{"id": "a", "name": "A", "measures": [{"of": "1 ea", "is": "0 g"}]},
                 {"id": "b", "name": "B", "price": {"amount": "-2", "per": "1 kg"}},
                 {"id": "c", "name": "C", "countIn": "bunch"},
                 {"id": "d", "name": "D", "preparations": [{"name": "x", "yield": "0"}, {"name": "x"}]},
                 {"id": "e", "name": "E", "keeps": "ten days"},
                 null]
                """))
                .satisfiesExactly(
                        first -> assertThat(first).startsWith("/0/measures/0/is Write more than zero"),
                        second -> assertThat(second).startsWith("/1/price/amount “-2” is not an amount"),
                        third -> assertThat(third).startsWith("/2/countIn Add to measures what 1 bunch is"),
                        fourth -> assertThat(fourth).startsWith("/3/preparations/0/yield Write the share"),
                        fifth -> assertThat(fifth).startsWith("/4/keeps “ten days” is not a time"));
    }

    @Test
    void refusesTwoPreparationsOfOneName() {
        assertThat(pantry.troubles("""
                [{"id": "d", "name": "D", "preparations": [{"name": "x", "yield": "0.9"}, {"name": "x"}]}]
                """))
                .singleElement()
                .asString()
                .startsWith("/0/preparations/1/name “x” is there twice");
    }

    @Test
    void hasASchemaForEveryMemberItReads() {
        var properties = Pantry.json(pantry.section.schema()).at("/$defs/ingredient/properties");

        Pantry.json(CELERIAC).get(0).fieldNames().forEachRemaining(member -> {
            if (!member.equals("shelf")) {
                assertThat(properties.has(member)).as(member).isTrue();
            }
        });
    }
}
