package etamine.catalogue.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import etamine.catalogue.RefusedException;
import etamine.kitchen.supply.Offer;
import etamine.kitchen.supply.Supplier;
import etamine.measures.Money;
import etamine.storage.BookException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class CatalogueExchangeTest {
    private static final String CREAM = """
            {"supplier": "dairy", "item": "cream", "code": "D-104", "gtin": "6291041500213", "pack": "6 x 1 l",
             "price": {"amount": "24.60"}, "breaks": [{"fromPacks": 5, "amount": "22.90"}],
             "lifeOnArrival": "P9D", "from": "2026-11-01", "x-shelf": "left"}""";

    private final Bench bench = new Bench();

    @Test
    void dumpsWhatWasLoadedWithMembersItDoesNotKnow() {
        assertThat(bench.load("[" + Bench.DAIRY + "]", "[" + CREAM + "]")).isEmpty();
        assertThat(bench.supplierSection.dump()).isEqualTo(Bench.json("[" + Bench.DAIRY + "]"));
        assertThat(bench.offerSection.dump()).isEqualTo(Bench.json("[" + CREAM + "]"));
    }

    @Test
    void dumpsNothingForAnEmptyShelf() {
        assertThat(bench.offerSection.dump().isMissingNode()).isTrue();
    }

    @Test
    void refusesUnknownItemsAndSuppliersWithTheirPointer() {
        List<String> troubles = bench.load("[]", """
                [{"supplier": "nobody", "item": "moonmilk", "pack": "1 l", "price": {"amount": "1.00"}}]""");
        assertThat(troubles).hasSize(2);
        assertThat(troubles.get(0)).startsWith("/0/supplier: There is no supplier “nobody”");
        assertThat(troubles.get(1)).startsWith("/0/item: There is no item “moonmilk”");
        assertThat(bench.shelves.offers()).isEmpty();
    }

    @Test
    void namesEveryProblemOfAnEntry() {
        List<String> troubles = bench.load("""
                [{"id": "dairy", "name": "Hill Dairy", "deliveryDays": ["TU", "XX"], "cutOff": {"time": "25:00"},
                  "minimum": "-1"}]""", """
                [{"supplier": "dairy", "item": "cream", "pack": "six", "price": {"amount": "-2"},
                  "breaks": [{"fromPacks": 0, "amount": "1"}], "from": "2026-13-01"}]""");
        assertThat(troubles)
                .extracting(trouble -> trouble.substring(0, trouble.indexOf(':')))
                .containsExactlyInAnyOrder(
                        "/0/deliveryDays/1",
                        "/0/cutOff/time",
                        "/0/minimum",
                        "/0/pack",
                        "/0/price/amount",
                        "/0/breaks/0/fromPacks",
                        "/0/from");
    }

    @Test
    void refusesAPackThatCannotBeConvertedAndNamesTheMissingMeasure() {
        List<String> troubles = bench.load("[" + Bench.DAIRY + "]", """
                [{"supplier": "dairy", "item": "cream", "pack": "3 ea", "price": {"amount": "1.00"}}]""");
        assertThat(troubles).singleElement().asString().startsWith("/0/pack:").contains("Add");
    }

    @Test
    void editsKeepMembersThatOnlyTheFileKnew() {
        bench.load("[" + Bench.DAIRY + "]", "[" + CREAM + "]");
        Supplier dairy = bench.catalogue.suppliers().get("dairy");
        bench.suppliers.save(
                new Supplier(
                        dairy.id(),
                        "Hill Dairy Ltd",
                        dairy.email(),
                        dairy.deliveryDays(),
                        Optional.empty(),
                        dairy.minimum(),
                        Money.of("7.50", dairy.fee().currency())),
                bench.suppliers.supplierRevision("dairy"));
        assertThat(bench.supplierSection.dump().get(0)).isEqualTo(Bench.json("""
                {"id": "dairy", "name": "Hill Dairy Ltd", "email": "orders@dairy.example",
                 "deliveryDays": ["TU", "FR"], "minimum": "80.00", "fee": "7.50", "x-note": "ask for Una"}"""));
    }

    @Test
    void movesAnOfferToItsNewArticleNumberInOneUndoableStep() {
        bench.load("[" + Bench.DAIRY + "]", "[" + CREAM + "]");
        Offer old = bench.shelves.offers().get("dairy/D-104@2026-11-01");
        bench.suppliers.save(
                new Offer(
                        old.supplier(),
                        old.item(),
                        "D-200",
                        old.gtin(),
                        old.pack(),
                        new BigDecimal("25.00"),
                        old.per(),
                        old.breaks(),
                        old.lifeOnArrival(),
                        old.from()),
                "dairy/D-104@2026-11-01",
                bench.suppliers.offerRevision("dairy/D-104@2026-11-01"));
        assertThat(bench.shelves.offers().keySet()).isEqualTo(Set.of("dairy/D-200@2026-11-01"));
        assertThat(bench.offerSection.dump().get(0).get("x-shelf").asText()).isEqualTo("left");
        bench.book.history().undo();
        assertThat(bench.shelves.offers().keySet()).isEqualTo(Set.of("dairy/D-104@2026-11-01"));
        assertThat(bench.offerSection.dump()).isEqualTo(Bench.json("[" + CREAM + "]"));
    }

    @Test
    void refusesToSaveOverWhatSomebodyChangedMeanwhile() {
        bench.load("[" + Bench.DAIRY + "]", "[" + CREAM + "]");
        Supplier dairy = bench.catalogue.suppliers().get("dairy");
        String id = "dairy/D-104@2026-11-01";
        Offer cream = bench.shelves.offers().get(id);
        bench.book.write("Somebody else", transaction -> {
            transaction.save("suppliers", "dairy", 1, Bench.DAIRY.replace("Hill Dairy", "Vale Dairy"));
            return transaction.save("offers", id, 1, CREAM.replace("left", "right"));
        });
        assertThatThrownBy(() -> bench.suppliers.save(dairy, 1)).matches(CatalogueExchangeTest::stale);
        assertThatThrownBy(() -> bench.suppliers.save(cream, id, 1)).matches(CatalogueExchangeTest::stale);
        assertThat(bench.catalogue.suppliers().get("dairy").name()).isEqualTo("Vale Dairy");
    }

    private static boolean stale(Throwable problem) {
        return problem instanceof BookException refused && refused.reason() == BookException.Reason.STALE;
    }

    @Test
    void removesASupplierWithItsOffersAndTakesThatBackWhole() {
        bench.load("[" + Bench.DAIRY + "]", "[" + CREAM + "]");
        bench.suppliers.removeSupplier("dairy");
        assertThat(bench.shelves.suppliers()).isEmpty();
        assertThat(bench.shelves.offers()).isEmpty();
        bench.book.history().undo();
        assertThat(bench.shelves.offers()).hasSize(1);
    }

    @Test
    void refusesAnOfferOfAnUnknownItemOrOverAnother() {
        bench.load("[" + Bench.DAIRY + "]", "[" + CREAM + "]");
        Offer offer = bench.shelves.offers().get("dairy/D-104@2026-11-01");
        assertThatThrownBy(() -> bench.suppliers.save(offer, "", 0))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("already an offer dairy/D-104");
        Offer strange = new Offer(
                "dairy",
                "moonmilk",
                "X",
                "",
                offer.pack(),
                offer.amount(),
                offer.per(),
                offer.breaks(),
                offer.lifeOnArrival(),
                offer.from());
        assertThatThrownBy(() -> bench.suppliers.save(strange, "", 0))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("no item “moonmilk”");
    }
}
