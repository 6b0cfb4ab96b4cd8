package heapwright.cli;

import heapwright.advice.Advisor;
import heapwright.journal.Journal;
import heapwright.journal.JournalFault;
import heapwright.report.Catalogue;
import heapwright.web.CannotListenException;
import heapwright.web.WebOptions;
import heapwright.web.WebServer;
import heapwright.web.site.EarlyAdvice;
import heapwright.web.site.Site;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The page: for a browser on this machine. */
@Command(
        name = ServeCommand.NAME,
        mixinStandardHelpOptions = true,
        description = "Serves the page to a browser on this machine, and opens it where there is one.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  heapwright serve",
            "  heapwright serve --port 8080 --piles ~/piles",
            "  heapwright serve --host 0.0.0.0 --no-browser   also for the phone in the same house"
        })
final class ServeCommand implements Callable<Integer> {

    static final String NAME = "serve";

    private static final Logger LOG = LoggerFactory.getLogger(ServeCommand.class);

    private final Terminal terminal;
    private final Services workshop;

    @Spec
    private CommandSpec spec;

    @Option(
            names = "--port",
            paramLabel = "PORT",
            defaultValue = "" + WebOptions.USUAL_PORT,
            description = "The port; 0 takes any that is free (default: ${DEFAULT-VALUE}).")
    private int port;

    @Option(
            names = "--host",
            paramLabel = "ADDRESS",
            defaultValue = WebOptions.LOOPBACK,
            description = "The address to listen on (default: ${DEFAULT-VALUE}, this machine only). Whoever can reach"
                    + " another address can read and change your piles.")
    private String host;

    @Option(
            names = "--piles",
            paramLabel = "DIR",
            description = "The folder of your piles (default: \"Heapwright piles\" in your home folder).")
    private Path piles;

    @Option(names = "--no-browser", description = "Only print the address.")
    private boolean noBrowser;

    @Mixin
    private LocalOption local;

    ServeCommand(Terminal terminal, Services workshop) {
        this.terminal = terminal;
        this.workshop = workshop;
    }

    @Override
    public Integer call() throws InterruptedException {
        if (port < 0 || port > 65_535) {
            throw new UsageFault("heapwright: --port " + port + ": found " + port
                    + ", allowed are 0 to 65535. Example: --port 8080");
        }
        OutOfMemoryExit exit = new OutOfMemoryExit();
        Thread.setDefaultUncaughtExceptionHandler((thread, fault) -> {
            exit.accept(fault);
            LOG.error("The thread {} ended", thread.getName(), fault);
        });
        Log.server(terminal.err(), spec.commandLine().getParseResult().hasMatchedOption(Log.DEBUG), exit);
        Path folder = piles == null ? Journal.usualFolder(FileNames.path(System.getProperty("user.home"))) : piles;
        Clock clock = Clock.systemDefaultZone();
        workshop.take(local);
        Journal journal = new Journal(folder, workshop.knowledge().vocabulary(), clock);
        journal.obstacle().ifPresent(ServeCommand::refuse);
        Advisor advisor = workshop.advisor();
        // Rules that cannot be loaded must fail here and not at the first question.
        advisor.rulebook();
        Site site = Site.of(advisor, journal, Catalogue.english(), clock, Services.version());
        try (WebServer server = WebServer.start(site, new WebOptions(host, port), exit)) {
            CountDownLatch stopped = new CountDownLatch(1);
            Runtime.getRuntime().addShutdownHook(new Thread(() -> stop(server, stopped), "stop"));
            tell(server);
            terminal.err().println("Piles are in " + journal.folder() + ". Stop with Ctrl+C.");
            if (!noBrowser) {
                Browser.open(server.address());
            }
            ahead(site);
            stopped.await();
        } catch (CannotListenException cannot) {
            throw new UsageFault("heapwright: " + reason(cannot));
        }
        return Program.OK;
    }

    /** The piles of the folder are worked out meanwhile; the thread ends with the program. */
    private static void ahead(Site site) {
        Thread early = new Thread(new EarlyAdvice(site), "early");
        early.setDaemon(true);
        early.setPriority(Thread.MIN_PRIORITY);
        early.start();
    }

    /** Tells the address and, where other devices reach the server, theirs, with a code to scan on a terminal. */
    private void tell(WebServer server) {
        terminal.out().println(server.address());
        List<String> others = server.addressesForOthers();
        if (others.isEmpty()) {
            return;
        }
        terminal.err().println("On a phone or another machine in the same network:");
        others.stream().filter(a -> !a.equals(server.address())).forEach(terminal.out()::println);
        if (terminal.bold()) {
            ScanCode.of(others.get(0)).lines().forEach(terminal.err()::println);
        }
        terminal.err().println("Whoever is in that network can read and change your piles.");
    }

    /** Why the server cannot listen, and what to write instead. */
    private static String reason(CannotListenException cannot) {
        String host = cannot.options().host();
        int port = cannot.options().port();
        return switch (cannot.why()) {
            case NAME_UNKNOWN ->
                "--host " + host + ": no machine is known by that name. Give an address of this"
                        + " machine, or 0.0.0.0 for all of them. Example: heapwright serve --host 0.0.0.0";
            case ADDRESS_ELSEWHERE ->
                "--host " + host + ": that is no address of this machine; only one of its own"
                        + " can be listened on. 0.0.0.0 stands for all of them. Example: heapwright serve --host 0.0.0.0";
            case PORT_RESERVED ->
                "--port " + port + ": the system leaves ports below 1024 to its administrator. Name"
                        + " one from 1024 up. Example: heapwright serve --port " + WebOptions.USUAL_PORT;
            case PORT_TAKEN ->
                "port " + port + " is taken on " + host + ". Heapwright may be running already: try"
                        + " http://localhost:" + port + "/. Else name another. Example: heapwright serve --port "
                        + (port < 65_535 ? port + 1 : 0);
        };
    }

    /** A folder in which no pile can be kept is told before anything is typed. */
    private static void refuse(JournalFault obstacle) {
        throw new UsageFault("heapwright: piles cannot be kept there: " + obstacle.getMessage()
                + ". Name a folder that can be written; it is made if it is not there."
                + " Example: heapwright serve --piles ~/piles");
    }

    private static void stop(WebServer server, CountDownLatch stopped) {
        server.close();
        stopped.countDown();
    }
}
