package etamine.modules.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import etamine.base.Progress;
import etamine.base.Subscription;
import etamine.base.verb.Outcome;
import etamine.base.verb.Report;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.kitchen.today.Call;
import etamine.kitchen.today.CallSource;
import etamine.modules.InstalledModule;
import etamine.modules.ModuleException;
import etamine.modules.ModuleList;
import etamine.modules.ModuleState;
import etamine.modules.Need;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RunningModulesTest {
    private static final String BOOK = "<reference name='book' interface='etamine.storage.Book' bind='book'/>";
    private static final String LADLE = "<reference name='ladle' interface='kitchen.Ladle' bind='ladle'/>";

    @TempDir
    Path folder;

    private SmallFramework framework;
    private ModuleList modules;

    @BeforeEach
    void start() throws Exception {
        framework = new SmallFramework(folder, Map.of("broken.jar", "not a bundle"), List.of("etamine.vital"));
        modules = framework.service(ModuleList.class);
    }

    @AfterEach
    void stop() throws Exception {
        framework.close();
    }

    @Test
    void listsItselfAsRunningWithTheServiceItNeeds() {
        InstalledModule self = find("etamine.modules");
        assertThat(self.state()).isEqualTo(ModuleState.RUNNING);
        assertThat(self.needs())
                .contains(new Need(
                        Need.Kind.SERVICE, "org.osgi.service.component.runtime.ServiceComponentRuntime", true));
    }

    @Test
    void saysWhichServiceAModuleWaitsFor() throws Exception {
        add("etamine.soup", QuietComponent.class, LADLE);
        assertThat(find("etamine.soup").state()).isEqualTo(ModuleState.WAITING);
        assertThat(find("etamine.soup").missing()).containsExactly(new Need(Need.Kind.SERVICE, "kitchen.Ladle", false));
    }

    @Test
    void takesWaitingForABookAsRunning() throws Exception {
        add("etamine.soup", QuietComponent.class, BOOK);
        assertThat(find("etamine.soup").state()).isEqualTo(ModuleState.RUNNING);
    }

    @Test
    void takesWaitingForAModuleThatWaitsForABookAsRunning() throws Exception {
        add("etamine.soup", QuietComponent.class, BOOK + "<service><provide interface='kitchen.Ladle'/></service>");
        add("etamine.stew", QuietComponent.class, LADLE);
        assertThat(find("etamine.stew").state()).isEqualTo(ModuleState.RUNNING);
    }

    @Test
    void showsWhatAFailingComponentThrew() throws Exception {
        add("etamine.larder", ThrowingComponent.class, "");
        assertThat(find("etamine.larder").state()).isEqualTo(ModuleState.FAILED);
        assertThat(find("etamine.larder").failure().orElseThrow()).contains("the larder is locked");
    }

    @Test
    void makesACallForEachFailedModule() throws Exception {
        add("etamine.larder", ThrowingComponent.class, "");
        List<Call> calls = framework.service(CallSource.class).calls(Instant.EPOCH);
        assertThat(calls)
                .extracting(Call::id)
                .containsExactly("module-failed/broken.jar", "module-failed/etamine.larder");
        assertThat(calls.get(1).text()).contains("etamine.larder").contains("the larder is locked");
    }

    @Test
    void listsAFileThatCouldNotBeRead() {
        assertThat(find("broken.jar").state()).isEqualTo(ModuleState.FAILED);
        assertThat(find("broken.jar").failure()).contains("not a bundle");
    }

    @Test
    void namesThePackageThatNobodyOffers() throws Exception {
        framework.install(new TinyBundle("etamine.soup")
                .header("Import-Package", "org.osgi.framework,kitchen.spoons")
                .write(folder.resolve("soup.jar")));
        assertThat(find("etamine.soup").state()).isEqualTo(ModuleState.STOPPED);
        assertThat(find("etamine.soup").missing())
                .containsExactly(new Need(Need.Kind.PACKAGE, "kitchen.spoons", false));
        assertThatThrownBy(() -> modules.start("soup"))
                .isInstanceOf(ModuleException.class)
                .hasMessageContaining("kitchen.spoons");
    }

    @Test
    void stopsAndStartsAModuleAndRemembersIt() throws Exception {
        add("etamine.soup", QuietComponent.class, "");
        modules.stop("soup");
        assertThat(find("etamine.soup").state()).isEqualTo(ModuleState.STOPPED);
        assertThat(Files.readAllLines(folder.resolve("stopped"))).containsExactly("etamine.soup");
        modules.start("etamine.soup");
        assertThat(find("etamine.soup").state()).isEqualTo(ModuleState.RUNNING);
        assertThat(Files.readAllLines(folder.resolve("stopped"))).isEmpty();
    }

    @Test
    void refusesToStopWhatEverythingNeeds() throws Exception {
        add("etamine.vital", QuietComponent.class, "");
        assertThatThrownBy(() -> modules.stop("vital"))
                .isInstanceOf(ModuleException.class)
                .hasMessage("etamine.vital stays: everything else needs it.");
        assertThat(find("etamine.vital").state()).isEqualTo(ModuleState.RUNNING);
    }

    @Test
    void tellsListenersOfAChangeUntilTheyLeave() throws Exception {
        add("etamine.soup", QuietComponent.class, "");
        CountDownLatch told = new CountDownLatch(1);
        try (Subscription subscription = modules.onChange(told::countDown)) {
            modules.stop("soup");
            assertThat(told.await(5, TimeUnit.SECONDS)).isTrue();
        }
    }

    @Test
    void printsTheListAndAsksToLookWhenAModuleFailed() throws Exception {
        Report report = run();
        assertThat(report.outcome()).isEqualTo(Outcome.LOOK);
        assertThat(report.lines()).anyMatch(line -> line.matches("broken.jar +failed +not a bundle"));
        assertThat(report.json().toString()).contains("id=etamine.modules", "state=running", "needs=[");
    }

    @Test
    void stopsAModuleFromTheConsole() throws Exception {
        add("etamine.soup", QuietComponent.class, "");
        assertThat(run("stop", "soup").lines()).anyMatch(line -> line.matches("etamine.soup +1.2.3 +stopped"));
    }

    @Test
    void saysPlainlyThatInstallingComesLater() {
        assertThatThrownBy(() -> run("install", "soup.jar"))
                .isInstanceOf(VerbException.class)
                .hasMessageStartingWith("A later version brings 'modules install'.");
        assertThatThrownBy(() -> run("remove", "soup"))
                .isInstanceOf(VerbException.class)
                .hasMessageStartingWith("A later version brings 'modules remove'.");
    }

    @Test
    void refusesAWrongCallWithASentence() {
        assertThatThrownBy(() -> run("start")).hasMessage("Name one module, as in 'modules start recipes'.");
        assertThatThrownBy(() -> run("stir")).hasMessageStartingWith("There is no 'modules stir'.");
        assertThatThrownBy(() -> run("start", "nothing")).hasMessageStartingWith("There is no module nothing.");
    }

    private Report run(String... arguments) throws VerbException {
        Verb verb = framework.service(Verb.class);
        return verb.run(new VerbCall(List.of(arguments), Map.of(), "", folder, Progress.unseen()));
    }

    private void add(String name, Class<?> component, String body) throws Exception {
        Path jar = folder.resolve(name + ".jar");
        framework
                .install(new TinyBundle(name).component(component, body).write(jar))
                .start();
    }

    private InstalledModule find(String id) {
        return modules.modules().stream()
                .filter(module -> module.id().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
