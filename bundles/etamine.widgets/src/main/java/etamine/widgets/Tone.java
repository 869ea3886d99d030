package etamine.widgets;

/** How a figure or line should be seen; colour is only ever a second sign beside words or an icon. */
public enum Tone {
    /** As any other text. */
    PLAIN,
    /** Less important. */
    QUIET,
    /** As it should be. */
    GOOD,
    /** Worth a look. */
    WARN,
    /** Wrong or urgent. */
    BAD
}
