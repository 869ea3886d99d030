package etamine.catalogue.ui.internal;

/** The lines of a supplier's form. */
enum SupplierField {
    NAME("Name"),
    EMAIL("Email for orders"),
    DAYS("Delivers on, such as TU FR"),
    CUT_OFF_DAYS("Cut-off, days before"),
    CUT_OFF_TIME("Cut-off, time"),
    MINIMUM("Minimum order"),
    FEE("Delivery fee");

    private final String label;

    SupplierField(String label) {
        this.label = label;
    }

    String label() {
        return label;
    }
}
