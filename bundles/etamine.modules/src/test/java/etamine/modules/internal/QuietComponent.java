package etamine.modules.internal;

/** A component that does nothing. */
public class QuietComponent {}
