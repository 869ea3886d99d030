package etamine.launcher;

/** The program's entry: starts the platform, hands over the main thread and ends with the status it gives back. */
public final class Launcher {
    /** The exit status when the program could not start or broke down. */
    static final int BROKEN = 70;

    private Launcher() {}

    /** Starts the window or the console, which the first word says. */
    public static void main(String[] words) {
        System.exit(run(words));
    }

    static int run(String[] words) {
        try {
            return run(Settings.of(words));
        } catch (StartException e) {
            System.err.println("etamine: " + e.getMessage());
        } catch (Exception e) {
            System.err.println("etamine: the program broke down: " + e);
            e.printStackTrace();
        }
        return BROKEN;
    }

    private static int run(Settings settings) throws Exception {
        try (Platform platform = new Platform(settings)) {
            Runtime.getRuntime().addShutdownHook(new Thread(platform::close, "etamine-stop"));
            if (settings.window()) {
                platform.startBeside();
            } else {
                platform.start();
            }
            return platform.call();
        }
    }
}
