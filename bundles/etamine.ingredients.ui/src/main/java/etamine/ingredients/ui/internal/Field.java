package etamine.ingredients.ui.internal;

/** The lines of the form. */
enum Field {
    NAME("Name"),
    GROUP("Group"),
    STORAGE("Storage"),
    KEEPS("Keeps, days"),
    COUNT_IN("Counted in"),
    PRICE("Written price, without tax"),
    CONTAINS("Contains, with commas between"),
    MAY_CONTAIN("May contain, with commas between");

    private final String label;

    Field(String label) {
        this.label = label;
    }

    String label() {
        return label;
    }
}
