package etamine.recipes.ui.internal;

/** The single lines of the form. */
enum Field {
    NAME("Name", ""),
    PORTION("Portion", "70 g"),
    KEEPS("Keeps, days", "3"),
    TESTED("Times tested", "0"),
    MENU_PRICE("Menu price, tax included", "24.00"),
    TAX("Tax, % of the net price", "0"),
    Q_FACTOR("Q factor, % of the cost", "0"),
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
