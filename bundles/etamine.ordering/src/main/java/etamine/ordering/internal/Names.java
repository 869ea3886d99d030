package etamine.ordering.internal;

/** The shelves of this module, which are also its sections. */
final class Names {
    static final String MODULE = "etamine.ordering";
    static final String PARS = "pars";
    static final String ORDERS = "orders";
    static final String ON_ORDER = "onOrder";

    private Names() {}
}
