package etamine.recipes.ui.internal;

import etamine.kitchen.recipe.Kind;
import java.util.Locale;

/** Kinds of recipes as people read them. */
final class KindText {
    private KindText() {}

    static String of(Kind kind) {
        String name = kind.name();
        return name.charAt(0) + name.substring(1).toLowerCase(Locale.ROOT);
    }

    static Kind read(String label) {
        return Kind.valueOf(label.toUpperCase(Locale.ROOT));
    }
}
