package etamine.launcher;

import java.util.Hashtable;
import java.util.List;
import java.util.concurrent.Callable;
import org.osgi.framework.BundleActivator;
import org.osgi.framework.BundleContext;

/** Takes the main thread as a console that checks what it was given and ends with the number it was asked for. */
public class ProbeActivator implements BundleActivator {

    @Override
    public void start(BundleContext context) {
        Hashtable<String, Object> properties = new Hashtable<>();
        properties.put("launcher.main", "probe");
        Callable<Integer> main = () -> status(context);
        context.registerService(Callable.class, main, properties);
    }

    private static int status(BundleContext context) throws Exception {
        List<?> arguments = context.getService(context.getServiceReferences(List.class, "(launcher.arguments=true)")
                .iterator()
                .next());
        if (arguments.contains("throw")) {
            throw new IllegalStateException("the soup burnt");
        }
        return Thread.currentThread().getName().equals(arguments.get(0))
                ? Integer.parseInt((String) arguments.get(1))
                : 99;
    }

    @Override
    public void stop(BundleContext context) {
        // the framework takes the service back
    }
}
