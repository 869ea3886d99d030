package etamine.recipes.ui.internal;

/** The single lines of the form. */
enum Field {
    NAME("Name", ""),
    STATION("Station", "sauce"),
    PORTION("Portion", "70 g"),
    KEEPS("Keeps, days", "3"),
    TESTED("Good tries", "0"),
    ABSORBS("Takes up water", "400 g"),
    REDUCES_TO("Reduces to", "1/4 or 25 %"),
    MENU_PRICE("Price with tax", "24.00"),
    TAX("Tax, % of the net", "0"),
    Q_PERCENT("Q factor, %", "2"),
    Q_AMOUNT("Q factor, amount", "0.00"),
    PACKAGING("Packaging each", "0.00"),
    TARGET("Food cost aim, %", "30"),
    NOTES("Notes", "");

    private final String label;
    private final String hint;

    Field(String label, String hint) {
        this.label = label;
        this.hint = hint;
    }

    String label() {
        return label;
    }

    String hint() {
        return hint;
    }
}
