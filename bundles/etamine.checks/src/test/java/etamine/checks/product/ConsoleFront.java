package etamine.checks.product;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.reflect.Constructor;
import java.lang.reflect.Method;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.osgi.framework.Bundle;

/**
 * The console of a running suite with its two streams caught: what one call of the program does between its start and
 * its end, without a new process for each.
 */
final class ConsoleFront {
    private static final String PACKAGE = "etamine.console.internal.";

    private final Suite suite;
    private final Path folder;
    private final Bundle bundle;

    ConsoleFront(Suite suite, Path folder) {
        this.suite = suite;
        this.folder = folder;
        this.bundle = suite.bundle("etamine.console");
    }

    /**
     * What one call ended with.
     *
     * @param status the exit status
     * @param out standard output
     * @param err standard error
     */
    record Said(int status, String out, String err) {

        /** Standard output as the one JSON value it must be. */
        JsonNode json() {
            try {
                return new ObjectMapper()
                        .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                        .readTree(out);
            } catch (IOException e) {
                throw new AssertionError("Standard output is not one JSON value: " + out, e);
            }
        }
    }

    /** Holds one call on the book named {@code book}, which is closed again afterwards. */
    Said say(String... words) throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Object session = suite.service("etamine.storage.BookSession");
        Object verbs = make("RegistryVerbs", bundle.getBundleContext());
        Object around = make("Surroundings", folder, "book", "0.1.0", suite.failed(), false);
        Object conversation = make("Conversation", verbs, session, around, make("Printer", stream(out), stream(err)));
        Method hold = conversation.getClass().getDeclaredMethod("hold", List.class);
        hold.setAccessible(true);
        try {
            int status = (int) hold.invoke(conversation, List.of(words));
            return new Said(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
        } finally {
            suite.closeBook();
        }
    }

    private static PrintStream stream(ByteArrayOutputStream bytes) {
        return new PrintStream(bytes, true, StandardCharsets.UTF_8);
    }

    private Object make(String name, Object... values) throws ReflectiveOperationException {
        Constructor<?> constructor = bundle.loadClass(PACKAGE + name).getDeclaredConstructors()[0];
        constructor.setAccessible(true);
        return constructor.newInstance(values);
    }
}
