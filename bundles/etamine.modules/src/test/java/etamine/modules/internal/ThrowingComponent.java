package etamine.modules.internal;

/** A component that never comes up. */
public class ThrowingComponent {
    /** Throws. */
    public ThrowingComponent() {
        throw new IllegalStateException("the larder is locked");
    }
}
