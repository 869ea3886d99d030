package etamine.ingredients.ui.internal;

/** The lines of the form. */
enum Field {
    NAME("Name"),
    GROUP("Group"),
    STORAGE("Storage"),
    KEEPS("Keeps, days"),
    COUNT_IN("Counted in"),
    PRICE("Written price, without tax"),
    NOTE("Notes"),
    SULPHITES("Sulphites ready to eat, mg/kg as total SO2");

    private final String label;

    Field(String label) {
        this.label = label;
    }

    String label() {
        return label;
    }
}
