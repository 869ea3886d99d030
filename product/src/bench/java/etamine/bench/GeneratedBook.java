package etamine.bench;

import etamine.launcher.Platform;
import etamine.launcher.Settings;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.osgi.framework.ServiceReference;

/** The assembled suite on a generated book of 5,000 ingredients and 10,000 recipes of 12 lines in four levels. */
final class GeneratedBook implements AutoCloseable {
    static final int BOUGHT = 5_000;
    static final int RECIPES = 10_000;
    static final int LINES = 12;
    static final int LEVELS = 4;
    private static final List<String> ALLERGENS = List.of("celery", "milk", "egg", "fish", "mustard", "sesame", "soya");

    private final Platform platform;
    private final Path file;
    private final String book;
    private final int[] items = new int[RECIPES * LINES];

    /** Starts the suite with an empty book. */
    GeneratedBook(Path product) throws Exception {
        Path folder = Files.createTempDirectory("etamine-bench");
        file = folder.resolve("generated.json");
        Files.writeString(file, json());
        platform = new Platform(new Settings(
                product.resolve("target").resolve("app"),
                List.of("base", "recipes", "costing"),
                "console",
                List.of(),
                Map.of("etamine.folder", folder.toString()),
                Duration.ofSeconds(60)));
        platform.start();
        book = folder.resolve("book").toString();
        call(session(), "create", book);
    }

    Path file() {
        return file;
    }

    /** The items each recipe uses: below {@link #BOUGHT} bought ones, above it recipes. */
    int[] items() {
        return items;
    }

    private Object session() throws Exception {
        return service("etamine.storage.BookSession");
    }

    /** Closes the book and opens it again. */
    void reopen() throws Exception {
        call(session(), "close");
        call(session(), "open", book);
    }

    void load() throws Exception {
        Object exchange = service("etamine.kitchen.exchange.Exchange");
        Class<?> contract = Class.forName(
                "etamine.kitchen.exchange.Exchange", false, exchange.getClass().getClassLoader());
        for (Method method : contract.getMethods()) {
            if (method.getName().equals("load") && method.getParameterTypes()[0] == List.class) {
                Object strict =
                        method.getParameterTypes()[1].getMethod("strict").invoke(null);
                Object unseen =
                        method.getParameterTypes()[2].getMethod("unseen").invoke(null);
                Object result = method.invoke(exchange, List.of(file), strict, unseen);
                if (!(Boolean) call(result, "written")) {
                    throw new IllegalStateException("The generated book was rejected: " + result);
                }
            }
        }
    }

    void save(String shelf, String id, String entry) throws Exception {
        Object open = service("etamine.storage.Book");
        Class<?> work = open.getClass().getClassLoader().loadClass("etamine.storage.Book$Work");
        Object body = Proxy.newProxyInstance(
                work.getClassLoader(),
                new Class<?>[] {work},
                (proxy, method, arguments) -> call(arguments[0], "save", shelf, id, -1L, entry));
        call(open, "write", "Change an entry", body);
    }

    private String json() {
        Random random = new Random(11);
        StringBuilder json = new StringBuilder("{\"etamine\":\"1\",\"ingredients\":[");
        for (int i = 0; i < BOUGHT; i++) {
            json.append(i == 0 ? "" : ",").append(ingredient(i, (1 + random.nextInt(40)) + ".50"));
        }
        json.append("],\"recipes\":[");
        for (int r = 0; r < RECIPES; r++) {
            choose(r, random);
            json.append(r == 0 ? "" : ",").append(recipe(r, ""));
        }
        return json.append("]}").toString();
    }

    private void choose(int recipe, Random random) {
        int level = RECIPES / LEVELS;
        int below = recipe / level * level;
        for (int line = 0; line < LINES; line++) {
            boolean made = below > 0 && line < 3;
            items[recipe * LINES + line] =
                    made ? BOUGHT + below - level + random.nextInt(level) : random.nextInt(BOUGHT);
        }
    }

    static String ingredient(int i, String price) {
        return "{\"id\":\"i" + i + "\",\"name\":\"Ingredient " + i
                + "\",\"countIn\":\"kg\",\"measures\":[{\"of\":\"1 cup\","
                + "\"is\":\"150 g\"}],\"preparations\":[{\"name\":\"trimmed\",\"yield\":\"0.8\"}],\"contains\":["
                + (i % 9 == 0 ? "\"" + ALLERGENS.get(i % ALLERGENS.size()) + "\"" : "")
                + "],\"allergensKnown\":true,\"price\":{\"amount\":\"" + price + "\",\"per\":\"1 kg\"}}";
    }

    /** A recipe as somebody has just changed it, in turn by its notes, its name and two of the items it uses. */
    String changed(int r, int nth) {
        if (nth % 3 == 2) {
            int below = r / (RECIPES / LEVELS) * (RECIPES / LEVELS);
            items[r * LINES + 1] = below > 0 ? BOUGHT + nth * 7919 % below : nth * 7919 % BOUGHT;
            items[r * LINES + 7] = nth * 104_729 % BOUGHT;
        }
        return nth % 3 == 1 ? recipe(r, "Recipe " + r + " as of late", "") : recipe(r, "Change " + nth);
    }

    String recipe(int r, String notes) {
        return recipe(r, "Recipe " + r, notes);
    }

    private String recipe(int r, String name, String notes) {
        StringBuilder json =
                new StringBuilder("{\"id\":\"r" + r + "\",\"name\":\"" + name + "\",\"kind\":\"component\",\"uses\":[");
        for (int line = 0; line < LINES; line++) {
            int item = items[r * LINES + line];
            json.append(line == 0 ? "" : ",")
                    .append(
                            item >= BOUGHT
                                    ? "{\"item\":\"r" + (item - BOUGHT) + "\",\"quantity\":\"50 g\"}"
                                    : "{\"item\":\"i" + item + "\",\"quantity\":\"1/2 cup\",\"as\":\"trimmed\"}");
        }
        boolean sold = r >= RECIPES - RECIPES / LEVELS;
        json.append(sold ? "],\"portion\":\"200 g\",\"menuPrice\":\"24.00\",\"taxPercent\":\"13.5\"" : "]");
        return json.append(",\"makes\":[{\"item\":\"r" + r + "\",\"quantity\":\"600 g\"}],\"steps\":[{\"id\":\"a\",")
                .append("\"text\":\"Sweat everything slowly in a wide pan, deglaze, cook down and pass; batch " + r
                        + ".\",")
                .append("\"hands\":\"PT10M\",\"unattended\":\"PT20M\",\"equipment\":\"hob ring\"}],\"notes\":\"")
                .append(notes)
                .append("\"}")
                .toString();
    }

    Object service(String type) throws Exception {
        ServiceReference<?>[] found = platform.context().getAllServiceReferences(type, null);
        if (found == null) {
            throw new IOException("No service " + type + "; modules that failed: " + platform.failed());
        }
        return platform.context().getService(found[0]);
    }

    /** Calls a public method by name: the bundles have class loaders of their own. */
    static Object call(Object target, String name, Object... arguments) throws Exception {
        for (Method method : target.getClass().getMethods()) {
            if (method.getName().equals(name) && method.getParameterCount() == arguments.length) {
                method.setAccessible(true);
                try {
                    return method.invoke(target, arguments);
                } catch (InvocationTargetException e) {
                    throw e.getCause() instanceof Exception cause ? cause : e;
                }
            }
        }
        throw new IllegalStateException("No method " + name + " on " + target.getClass());
    }

    @Override
    public void close() throws Exception {
        platform.close();
    }
}
