package etamine.modules;

/**
 * Something a module cannot work without.
 *
 * @param kind what sort of thing it is
 * @param name the bundle's symbolic name, the package or the service's type
 * @param met whether it is there now
 */
public record Need(Kind kind, String name, boolean met) {

    /** The sorts of things that modules need. */
    public enum Kind {
        /** Another bundle, whose packages it uses. */
        BUNDLE,
        /** A package that no installed bundle offers. */
        PACKAGE,
        /** A service of another module. */
        SERVICE
    }
}
