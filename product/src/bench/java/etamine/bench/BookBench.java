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
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.osgi.framework.ServiceReference;

/**
 * The assembled suite on a generated book of 5,000 ingredients and 10,000 recipes of 12 lines: loading it, opening it, the
 * first reckoning, and the time from changing one price in the book to the new cost of a plate.
 */
final class BookBench implements Bench {
    private static final int BOUGHT = 5_000;
    private static final int RECIPES = 10_000;
    private static final int LINES = 12;
    private static final int LEVELS = 4;
    private static final int CHANGES = 40;

    private final Path product;

    BookBench(Path product) {
        this.product = product;
    }

    @Override
    public String name() {
        return "book";
    }

    @Override
    public List<String> measure() throws Exception {
        Path folder = Files.createTempDirectory("etamine-bench");
        Path file = folder.resolve("generated.json");
        Files.writeString(file, json());
        Settings settings = new Settings(
                product.resolve("target").resolve("app"),
                List.of("base", "recipes", "costing"),
                "console",
                List.of(),
                Map.of("etamine.folder", folder.toString()),
                Duration.ofSeconds(60));
        List<String> lines = new ArrayList<>();
        lines.add(String.format(Locale.ROOT, "file: %.1f MB", Files.size(file) / 1e6));
        try (Platform platform = new Platform(settings)) {
            platform.start();
            Object session = service(platform, "etamine.storage.BookSession");
            String book = folder.resolve("book").toString();
            call(session, "create", book);
            Object exchange = service(platform, "etamine.kitchen.exchange.Exchange");
            long start = System.nanoTime();
            load(exchange, file);
            lines.add(String.format(Locale.ROOT, "load into an empty book: %.1f s", since(start) / 1000));
            call(session, "close");
            start = System.nanoTime();
            call(session, "open", book);
            lines.add(String.format(Locale.ROOT, "open, all services up: %.0f ms", since(start)));
            start = System.nanoTime();
            cost(platform);
            lines.add(String.format(Locale.ROOT, "first reckoning of the whole book: %.0f ms", since(start)));
            lines.add(change(platform));
        }
        return lines;
    }

    private static void load(Object exchange, Path file) throws Exception {
        Class<?> contract = Class.forName(
                "etamine.kitchen.exchange.Exchange", false, exchange.getClass().getClassLoader());
        for (Method method : contract.getMethods()) {
            if (method.getName().equals("load")) {
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

    private static String change(Platform platform) throws Exception {
        Object book = service(platform, "etamine.storage.Book");
        List<Double> write = new ArrayList<>();
        List<Double> reckon = new ArrayList<>();
        for (int i = 0; i < CHANGES; i++) {
            String entry = ingredient(i, "9." + (10 + i));
            long start = System.nanoTime();
            write(book, "i" + i, entry);
            write.add(since(start));
            start = System.nanoTime();
            cost(platform);
            reckon.add(since(start));
        }
        Collections.sort(write);
        Collections.sort(reckon);
        return String.format(
                Locale.ROOT,
                "one price changed: durable in median %.1f ms, whole book reckoned anew and a plate's cost read in"
                        + " median %.1f ms (worst %.1f ms)",
                write.get(CHANGES / 2),
                reckon.get(CHANGES / 2),
                reckon.get(CHANGES - 1));
    }

    private static void write(Object book, String id, String entry) throws Exception {
        Class<?> work = book.getClass().getClassLoader().loadClass("etamine.storage.Book$Work");
        Object body = Proxy.newProxyInstance(
                work.getClassLoader(),
                new Class<?>[] {work},
                (proxy, method, arguments) -> call(arguments[0], "save", "ingredients", id, -1L, entry));
        call(book, "write", "Change a price", body);
    }

    private static void cost(Platform platform) throws Exception {
        Object costs = service(platform, "etamine.kitchen.cost.Costs");
        Object cost = call(costs, "recipe", "r" + (RECIPES - 1));
        if (!cost.toString().startsWith("Optional[")) {
            throw new IllegalStateException("The generated plate has no cost.");
        }
    }

    private static String json() {
        Random random = new Random(11);
        StringBuilder json = new StringBuilder("{\"etamine\":\"1\",\"ingredients\":[");
        for (int i = 0; i < BOUGHT; i++) {
            json.append(i == 0 ? "" : ",").append(ingredient(i, (1 + random.nextInt(40)) + ".50"));
        }
        json.append("],\"recipes\":[");
        int level = RECIPES / LEVELS;
        for (int r = 0; r < RECIPES; r++) {
            json.append(r == 0 ? "" : ",").append(recipe(r, level, random));
        }
        return json.append("]}").toString();
    }

    private static String ingredient(int i, String price) {
        return "{\"id\":\"i" + i + "\",\"name\":\"Ingredient " + i
                + "\",\"countIn\":\"kg\",\"measures\":[{\"of\":\"1 cup\","
                + "\"is\":\"150 g\"}],\"preparations\":[{\"name\":\"trimmed\",\"yield\":\"0.8\"}],\"price\":{\"amount\":\""
                + price + "\",\"per\":\"1 kg\"}}";
    }

    private static String recipe(int r, int level, Random random) {
        int below = r / level * level;
        StringBuilder json = new StringBuilder(
                "{\"id\":\"r" + r + "\",\"name\":\"Recipe " + r + "\",\"kind\":\"component\",\"uses\":[");
        for (int line = 0; line < LINES; line++) {
            json.append(line == 0 ? "" : ",");
            if (below > 0 && line < 3) {
                json.append("{\"item\":\"r" + (below - level + random.nextInt(level)) + "\",\"quantity\":\"50 g\"}");
            } else {
                json.append(
                        "{\"item\":\"i" + random.nextInt(BOUGHT) + "\",\"quantity\":\"1/2 cup\",\"as\":\"trimmed\"}");
            }
        }
        return json.append("],\"makes\":[{\"item\":\"r" + r + "\",\"quantity\":\"600 g\"}]}")
                .toString();
    }

    private static Object service(Platform platform, String type) throws Exception {
        ServiceReference<?>[] found = platform.context().getAllServiceReferences(type, null);
        if (found == null) {
            throw new IOException("No service " + type + "; modules that failed: " + platform.failed());
        }
        return platform.context().getService(found[0]);
    }

    /** Calls a public method by name: the bundles have class loaders of their own. */
    private static Object call(Object target, String name, Object... arguments) throws Exception {
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

    private static double since(long start) {
        return (System.nanoTime() - start) / 1e6;
    }
}
