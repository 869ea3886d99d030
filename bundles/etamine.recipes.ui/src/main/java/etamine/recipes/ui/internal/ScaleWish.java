package etamine.recipes.ui.internal;

/** The ways to say what a recipe is scaled to. */
enum ScaleWish {
    PORTIONS("Portions", "52"),
    AMOUNT("Amount", "3 l"),
    VESSELS("Moulds and pans", "24 x 130 ml, or 2 x GN 1/1 65 mm, 80 %"),
    ON_HAND("What there is", "1.2 kg celeriac; 500 ml cream");

    private final String label;
    private final String hint;

    ScaleWish(String label, String hint) {
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
