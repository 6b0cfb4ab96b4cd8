package heapwright.web;

import heapwright.web.api.Api;
import heapwright.web.guard.Addresses;
import heapwright.web.guard.BodyDrain;
import heapwright.web.guard.Headers;
import heapwright.web.guard.HostGuard;
import heapwright.web.guard.OriginGuard;
import heapwright.web.guard.PlainErrors;
import heapwright.web.guard.SlowSenders;
import heapwright.web.guard.SoundRequests;
import heapwright.web.site.Routes;
import heapwright.web.site.Site;
import heapwright.web.work.Bounds;
import heapwright.web.work.Workload;
import io.javalin.Javalin;
import io.javalin.compression.CompressionStrategy;
import io.javalin.config.JavalinConfig;
import io.javalin.http.HttpStatus;
import io.javalin.util.JavalinBindException;
import java.net.InetSocketAddress;
import java.nio.channels.ServerSocketChannel;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.NetworkConnectionLimit;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.util.thread.QueuedThreadPool;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** The server of the page: started, asked for its address, stopped. */
public final class WebServer implements AutoCloseable {

    /** The longest body that is read, in bytes; a pile document of the largest size and its wrapping fit. */
    public static final long LARGEST_BODY = (1 << 20) + 1024;

    private static final Logger LOG = LoggerFactory.getLogger(WebServer.class);
    private static final int LARGEST_HEADER = 8 * 1024;
    private static final int THREADS = 40;
    /** This part of the time to stop may pass without a byte; judgement, a little more than the library's one second. */
    private static final int SILENT_AT_STOP = 4;

    private static final int QUEUE = 256;
    private static final int CONNECTIONS = 256;

    private final Javalin server;
    private final Workload workload;
    private final WebOptions options;

    private WebServer(Javalin server, Workload workload, WebOptions options) {
        this.server = server;
        this.workload = workload;
        this.options = options;
    }

    /**
     * Starts a server.
     *
     * @param grave is told what no request should bring about, such as that memory ran out; it may end the program
     * @throws CannotListenException when the host or the port cannot be had
     */
    public static WebServer start(Site site, WebOptions options, Consumer<Throwable> grave) {
        return start(site, options, Timeouts.USUAL, Bounds.usual(), grave);
    }

    /** Starts a server with a patience and bounds of its own. */
    static WebServer start(Site site, WebOptions options, Timeouts patience, Bounds bounds, Consumer<Throwable> grave) {
        CannotListenException.checkHost(options);
        BodyDrain drain = new BodyDrain(LARGEST_BODY);
        Workload workload = new Workload(bounds, LARGEST_BODY, drain, patience.stop());
        Javalin server = Javalin.create(config -> configure(config, site, options, patience, workload, drain, grave));
        try {
            server.start();
        } catch (JavalinBindException e) {
            server.stop();
            workload.close();
            throw CannotListenException.after(e, options);
        }
        return new WebServer(server, workload, options);
    }

    /** The port it listens on. */
    public int port() {
        return server.port();
    }

    /** The address for a browser on this machine. */
    public String address() {
        return Addresses.everywhere(options.host()) || options.host().equals(WebOptions.LOOPBACK)
                ? address("localhost")
                : address(options.host());
    }

    /** The addresses for other devices of the same network, the likeliest first; empty where none can reach it. */
    public List<String> addressesForOthers() {
        if (Addresses.everywhere(options.host())) {
            return NetworkAddresses.all().stream().map(this::address).toList();
        }
        return Addresses.loopback(options.host()) ? List.of() : List.of(address());
    }

    private String address(String host) {
        return "http://" + (host.contains(":") ? "[" + host + "]" : host) + ":" + port() + "/";
    }

    /** The addresses of this machine on which it listens. */
    List<InetSocketAddress> listensOn() {
        return Arrays.stream(server.jettyServer().server().getConnectors())
                .map(connector -> ((ServerConnector) connector).getTransport())
                .map(channel -> (InetSocketAddress)
                        ((ServerSocketChannel) channel).socket().getLocalSocketAddress())
                .toList();
    }

    /** Every address it answers, with its places as {@code {name}}, in the order of the alphabet. */
    public List<String> addresses() {
        return server.unsafe.internalRouter.allHttpHandlers().stream()
                .map(handler -> handler.endpoint)
                .filter(endpoint -> endpoint.method.isHttpMethod())
                .map(endpoint -> endpoint.path)
                .distinct()
                .sorted()
                .toList();
    }

    /** Lets requests under way finish, for a few seconds at most, then stops. */
    @Override
    public void close() {
        server.stop();
        workload.close();
    }

    private static void configure(
            JavalinConfig config,
            Site site,
            WebOptions options,
            Timeouts patience,
            Workload workload,
            BodyDrain drain,
            Consumer<Throwable> grave) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
        config.http.maxRequestSize = LARGEST_BODY;
        config.http.prefer405over404 = true;
        config.http.compressionStrategy = CompressionStrategy.NONE;
        config.http.defaultContentType = "text/plain; charset=utf-8";
        config.jetty.threadPool = threads(grave);
        config.jetty.modifyServer(server -> {
            server.setStopTimeout(patience.stop().toMillis());
            server.setErrorHandler(new PlainErrors());
        });
        config.jetty.modifyHttpConfiguration(http -> limits(http, patience));
        config.jetty.addConnector((server, http) -> connector(server, http, options, patience));
        config.router.handlerWrapper(workload);
        config.router.javaLangErrorHandler((response, error) -> {
            grave.accept(error);
            LOG.error("A request failed", error);
            response.setStatus(HttpStatus.INTERNAL_SERVER_ERROR.getCode());
        });
        config.routes.before(new Headers());
        config.routes.before(new HostGuard(options.host()));
        config.routes.before(new OriginGuard());
        config.routes.before(SoundRequests::address);
        config.routes.after(drain);
        new Api(site).register(config.routes);
        new Routes(site).register(config.routes);
    }

    private static QueuedThreadPool threads(Consumer<Throwable> grave) {
        QueuedThreadPool pool = new QueuedThreadPool(THREADS) {
            @Override
            protected void runJob(Runnable job) {
                try {
                    super.runJob(job);
                } catch (Error error) {
                    grave.accept(error);
                    throw error;
                }
            }
        };
        pool.setName("page");
        return pool;
    }

    private static void limits(HttpConfiguration http, Timeouts patience) {
        http.setRequestHeaderSize(LARGEST_HEADER);
        http.setSendServerVersion(false);
        http.setSendXPoweredBy(false);
        http.setIdleTimeout(patience.idle().toMillis());
    }

    private static ServerConnector connector(
            Server server, HttpConfiguration http, WebOptions options, Timeouts patience) {
        ServerConnector connector = new ServerConnector(server, 1, 1, new HttpConnectionFactory(http));
        connector.setHost(options.host());
        connector.setPort(options.port());
        connector.setIdleTimeout(patience.idle().toMillis());
        // While it stops, who falls silent is let go early enough that the others can finish.
        connector.setShutdownIdleTimeout(patience.stop().toMillis() / SILENT_AT_STOP);
        connector.setAcceptQueueSize(QUEUE);
        connector.addBean(new SlowSenders(patience.whole(), connector.getScheduler()));
        connector.addBean(new NetworkConnectionLimit(CONNECTIONS, connector));
        return connector;
    }
}
