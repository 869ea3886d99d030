package etamine.catalogue.internal;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.base.Problem;
import etamine.kitchen.price.PriceQuote;
import etamine.kitchen.supply.Offer;
import etamine.kitchen.today.DayMark;
import etamine.measures.Quantity;
import etamine.measures.Unit;
import etamine.measures.UnitPrice;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import org.junit.jupiter.api.Test;

class CatalogueTest {
    private final Bench bench = new Bench();

    private void offers(String offers) {
        assertThat(bench.load(
                        "[" + Bench.DAIRY + ", {\"id\": \"poultry\", \"name\": \"Poultry\"}]", "[" + offers + "]"))
                .isEmpty();
    }

    private PriceQuote quote(String item) {
        return new OfferPrice(bench.catalogue, bench.shelves, bench.kitchen)
                .quote(item)
                .orElseThrow();
    }

    @Test
    void quotesTheCheapestCurrentOfferPerUnit() {
        offers("""
                {"supplier": "dairy", "item": "cream", "code": "D-104", "pack": "6 x 1 l", "price": {"amount": "24.60"},
                 "from": "2026-11-01"},
                {"supplier": "dairy", "item": "cream", "code": "D-105", "pack": "2 l", "price": {"amount": "8.40"}},
                {"supplier": "dairy", "item": "cream", "code": "D-106", "pack": "1 l", "price": {"amount": "1.00"},
                 "from": "2026-11-25"}""");
        PriceQuote quote = quote("cream");
        assertThat(quote.price()).isEqualTo(UnitPrice.of("24.60", "6 l"));
        assertThat(quote.text()).isEqualTo("offer D-104 of Hill Dairy");
        assertThat(quote.asOf()).contains(LocalDate.of(2026, 11, 1));
    }

    @Test
    void quotesTheNextPriceFromItsFirstDayOn() {
        offers("""
                {"supplier": "dairy", "item": "cream", "code": "D-104", "pack": "6 x 1 l", "price": {"amount": "24.60"}},
                {"supplier": "dairy", "item": "cream", "code": "D-106", "pack": "1 l", "price": {"amount": "1.00"},
                 "from": "2026-11-25"}""");
        bench.clock.move(Duration.ofDays(1));
        assertThat(quote("cream").text()).contains("D-106");
    }

    @Test
    void takesThePriceOfAnArticleThatWasTheLastToComeIntoForce() {
        offers("""
                {"supplier": "dairy", "item": "cream", "code": "D-104", "pack": "1 l", "price": {"amount": "3.60"},
                 "from": "2026-09-01"},
                {"supplier": "dairy", "item": "cream", "code": "D-104", "pack": "1 l", "price": {"amount": "4.10"},
                 "from": "2026-11-16"},
                {"supplier": "dairy", "item": "cream", "code": "D-104", "pack": "1 l", "price": {"amount": "3.90"},
                 "from": "2026-12-24"}""");
        assertThat(quote("cream").price()).isEqualTo(UnitPrice.of("4.10", "1 l"));
        assertThat(bench.catalogue.offers(LocalDate.of(2026, 11, 15)))
                .extracting(Offer::amount)
                .containsExactly(new BigDecimal("3.60"));
        assertThat(bench.catalogue.offersFor("cream", LocalDate.of(2026, 12, 24)))
                .extracting(Offer::amount)
                .containsExactly(new BigDecimal("3.90"));
    }

    @Test
    void comparesAPriceByWeightWithAPriceByThePiece() {
        // 4 birds of 1.4 kg for 42.00 are 7.50 a kilogram.
        offers("""
                {"supplier": "poultry", "item": "guinea-fowl", "code": "P-7", "pack": "4 ea",
                 "price": {"amount": "7.80", "per": "1 kg"}},
                {"supplier": "poultry", "item": "guinea-fowl", "code": "P-8", "pack": "4 ea", "price": {"amount": "42.00"}}""");
        assertThat(quote("guinea-fowl").price()).isEqualTo(UnitPrice.of("42.00", "4 ea"));
    }

    @Test
    void reckonsAPackSoldByWeightByItsStatedContent() {
        offers("""
                {"supplier": "poultry", "item": "guinea-fowl", "code": "P-7", "pack": "4 ea",
                 "price": {"amount": "7.80", "per": "1 kg"}}""");
        Offer offer = bench.shelves.offers().get("poultry/P-7");
        assertThat(bench.catalogue.content(offer).orElseThrow().compareTo(Quantity.parse("5.6 kg")))
                .isZero();
        assertThat(bench.catalogue.packPrice(offer, 1).orElseThrow()).hasToString("43.68"); // 5.6 x 7.80
    }

    @Test
    void givesTheBreakThatTheNumberOfPacksReaches() {
        offers("""
                {"supplier": "dairy", "item": "cream", "pack": "6 x 1 l", "price": {"amount": "24.60"},
                 "breaks": [{"fromPacks": 5, "amount": "22.90"}, {"fromPacks": 10, "amount": "21.00"}]}""");
        Offer offer = bench.shelves.offers().get("dairy/cream");
        assertThat(bench.catalogue.packPrice(offer, 4).orElseThrow()).hasToString("24.60");
        assertThat(bench.catalogue.packPrice(offer, 5).orElseThrow()).hasToString("22.90");
        assertThat(bench.catalogue.packPrice(offer, 12).orElseThrow()).hasToString("21.00");
    }

    @Test
    void listsWhatDoesNotCompareLast() {
        offers("""
                {"supplier": "dairy", "item": "lemon", "code": "A", "pack": "100 ea", "price": {"amount": "40.00"}},
                {"supplier": "dairy", "item": "lemon", "code": "B", "pack": "10 ea", "price": {"amount": "2.00", "per": "1 kg"}}""");
        assertThat(bench.catalogue.offersFor("lemon", LocalDate.of(2026, 11, 24)))
                .extracting(Offer::code)
                .containsExactly("A", "B");
    }

    @Test
    void givesThePacksOwnContentWhenNobodyKnowsItems() {
        offers(
                "{\"supplier\": \"dairy\", \"item\": \"cream\", \"pack\": \"6 x 1 l\", \"price\": {\"amount\": \"24.60\"}}");
        bench.catalogue.items = null;
        assertThat(bench.catalogue.content(bench.shelves.offers().get("dairy/cream")))
                .contains(Quantity.parse("6 l"));
        assertThat(quote("cream").price()).isEqualTo(UnitPrice.of("24.60", "6 l"));
    }

    @Test
    void givesTheDeliveriesThatCanStillBeOrdered() {
        offers("");
        assertThat(bench.catalogue.deliveries(
                        "dairy", ZonedDateTime.now(bench.kitchen.clock()), LocalDate.of(2026, 12, 1)))
                .extracting(
                        delivery -> delivery.day() + " " + delivery.orderBy().toLocalDateTime())
                .containsExactly("2026-11-27 2026-11-26T22:00", "2026-12-01 2026-11-30T22:00");
    }

    @Test
    void marksCutOffsOnTheirDays() {
        offers("");
        assertThat(new CutOffMarks(bench.catalogue, bench.kitchen)
                        .marks(LocalDate.of(2026, 11, 26), LocalDate.of(2026, 11, 30)))
                .extracting(mark -> mark.day() + " " + mark.kind() + " " + mark.text())
                .containsExactlyInAnyOrder(
                        "2026-11-26 " + DayMark.Kind.CUT_OFF + " Hill Dairy: order by 22:00 for Fri",
                        "2026-11-30 " + DayMark.Kind.CUT_OFF + " Hill Dairy: order by 22:00 for Tue");
    }

    @Test
    void checksCheckDigitsAndPacksThatCannotBeConverted() {
        bench.items.with("guinea-fowl", Unit.KG);
        bench.catalogue.items = null;
        bench.book.write("Put", transaction -> {
            transaction.save("suppliers", "dairy", 0, Bench.DAIRY);
            return transaction.save("offers", "dairy/guinea-fowl", 0, """
                    {"supplier": "dairy", "item": "guinea-fowl", "pack": "4 ea", "gtin": "6291041500214",
                     "price": {"amount": "30.00"}}""");
        });
        bench.catalogue.items = bench.items;
        assertThat(new CatalogueCheck(bench.shelves, bench.catalogue).check())
                .extracting(Problem::code)
                .containsExactly("missing-equivalence", "gtin-check-digit");
    }

    @Test
    void findsSuppliersAndOffersByWhatIsTyped() {
        offers("{\"supplier\": \"dairy\", \"item\": \"cream\", \"code\": \"D-104\", \"pack\": \"6 x 1 l\","
                + " \"price\": {\"amount\": \"24.60\"}}");
        CatalogueFinder finder = new CatalogueFinder(bench.shelves, bench.catalogue);
        assertThat(finder.find("hill", 5))
                .extracting(found -> found.subject().toString())
                .containsExactly("supplier/dairy");
        assertThat(finder.find("d-1", 5))
                .extracting(found -> found.subject().toString())
                .containsExactly("offer/dairy/D-104");
        assertThat(finder.find("nothing", 5)).isEmpty();
    }

    @Test
    void remembersWhatAnOfferCostOnEveryDay() {
        offers("""
                {"supplier": "dairy", "item": "cream", "code": "D-104", "pack": "1 l", "price": {"amount": "3.60"},
                 "from": "2026-09-01"},
                {"supplier": "dairy", "item": "cream", "code": "D-104", "pack": "1 l", "price": {"amount": "4.10"},
                 "from": "2026-11-16"},
                {"supplier": "dairy", "item": "cream", "code": "D-104", "pack": "1 l", "price": {"amount": "3.90"},
                 "from": "2026-12-24"}""");
        OfferPrice prices = new OfferPrice(bench.catalogue, bench.shelves, bench.kitchen);
        assertThat(prices.quote("cream", LocalDate.of(2026, 11, 15))
                        .orElseThrow()
                        .price())
                .isEqualTo(UnitPrice.of("3.60", "1 l"));
        assertThat(prices.quote("cream", LocalDate.of(2026, 8, 31))).isEmpty();
        assertThat(prices.history("cream"))
                .extracting(quote ->
                        quote.asOf().orElseThrow() + " " + quote.price().amount())
                .containsExactly("2026-09-01 3.60", "2026-11-16 4.10");
    }

    @Test
    void remembersAnOfferWrittenOverAndOneThatIsGone() {
        offers("""
                {"supplier": "dairy", "item": "cream", "code": "D-104", "pack": "1 l", "price": {"amount": "4.00"}},
                {"supplier": "dairy", "item": "cream", "code": "D-105", "pack": "1 l", "price": {"amount": "3.00"}}""");
        bench.clock.move(Duration.ofDays(2));
        bench.book.write("Drop an offer", transaction -> {
            transaction.remove(Shelves.OFFERS, "dairy/D-105", 1);
            return 0;
        });
        bench.clock.move(Duration.ofDays(2));
        offers("""
                {"supplier": "dairy", "item": "cream", "code": "D-104", "pack": "1 l", "price": {"amount": "4.56"}}""");
        OfferPrice prices = new OfferPrice(bench.catalogue, bench.shelves, bench.kitchen);
        assertThat(prices.history("cream"))
                .extracting(quote ->
                        quote.asOf().orElseThrow() + " " + quote.price().amount())
                .containsExactly("2026-11-24 3.00", "2026-11-26 4.00", "2026-11-28 4.56");
        assertThat(prices.quote("cream", LocalDate.of(2026, 11, 23)))
                .as("written on the 24th without a first day")
                .isEmpty();
        assertThat(prices.quote("cream", LocalDate.of(2026, 11, 25))
                        .orElseThrow()
                        .price())
                .isEqualTo(UnitPrice.of("3.00", "1 l"));
    }
}
