package etamine.console.internal;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Which module brings the verbs that the guide describes, for a helpful word when it is not installed. */
final class KnownVerbs {
    private static final Map<String, String> MODULES = modules();

    private KnownVerbs() {}

    /** The module that brings the verb. */
    static Optional<String> module(String verb) {
        return Optional.ofNullable(MODULES.get(verb));
    }

    private static Map<String, String> modules() {
        Map<String, String> modules = new TreeMap<>();
        put(modules, "etamine.book", "new demo load dump check backup restore today find kitchen schema");
        put(modules, "etamine.ingredients", "items");
        put(modules, "etamine.recipes", "recipes recipe scale");
        put(modules, "etamine.costing", "cost");
        put(modules, "etamine.catalogue", "suppliers offers");
        put(modules, "etamine.inventory", "stock count receive waste make");
        put(modules, "etamine.diary", "covers sales");
        put(modules, "etamine.ordering", "plan order orders pars");
        put(modules, "etamine.modules", "modules");
        return modules;
    }

    private static void put(Map<String, String> modules, String module, String verbs) {
        for (String verb : verbs.split(" ")) {
            modules.put(verb, module);
        }
    }
}
