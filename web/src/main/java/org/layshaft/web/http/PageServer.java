package org.layshaft.web.http;

import static org.layshaft.web.desk.BadInputException.Kind.UNFIT;

import java.io.IOException;
import java.net.BindException;
import java.net.InetAddress;
import java.net.URI;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.handler.SizeLimitHandler;
import org.eclipse.jetty.util.thread.QueuedThreadPool;
import org.layshaft.web.board.Library;
import org.layshaft.web.desk.BadInputException;
import org.layshaft.web.desk.Desk;
import org.layshaft.web.page.Pages;

/** The server, bound to this machine alone. */
public final class PageServer implements AutoCloseable {
    private static final int MOST_THREADS = 16;
    private static final int FEWEST_THREADS = 4;
    private static final int LONGEST_HEAD_BYTES = 8 * 1024;

    /** What no route reads is refused sooner. */
    private static final int LONGEST_BODY_BYTES = BoardEndpoints.MOST_FORM_BYTES;

    /** Kept, so that its level is; a start needs no more said about it than its address. */
    private static final Logger JETTY = Logger.getLogger("org.eclipse.jetty");

    private final Server server;
    private final ServerConnector connector;

    private PageServer(Server server, ServerConnector connector) {
        this.server = server;
        this.connector = connector;
    }

    /**
     * A server that answers; it goes on warming up for a moment.
     *
     * @param port 0 for a free one; throws {@link BadInputException} where it is taken
     */
    public static PageServer start(int port, Desk desk) {
        return start(port, Library.fixed(desk));
    }

    /** The same over what is known at each moment. */
    public static PageServer start(int port, Library library) {
        requirePort(port);
        JETTY.setLevel(Level.WARNING);
        QueuedThreadPool threads = new QueuedThreadPool(MOST_THREADS, FEWEST_THREADS);
        threads.setName("page");
        Server server = new Server(threads);
        ServerConnector connector = new ServerConnector(server, 1, 1, new HttpConnectionFactory(configuration()));
        connector.setHost(InetAddress.getLoopbackAddress().getHostAddress());
        connector.setPort(port);
        server.addConnector(connector);
        ErrorReplies errors = new ErrorReplies(new Pages(library.desk()));
        server.setErrorHandler(new WireErrors(errors));
        SizeLimitHandler limits = new SizeLimitHandler(LONGEST_BODY_BYTES, -1);
        RoutesNow routes = new RoutesNow(library);
        limits.setHandler(new Dispatcher(routes, errors));
        server.setHandler(limits);
        bind(connector, port);
        begin(server);
        WarmUp.begin(routes.get().routes(), library.desk().knowledge().layouts().values());
        return new PageServer(server, connector);
    }

    private static HttpConfiguration configuration() {
        HttpConfiguration configuration = new HttpConfiguration();
        configuration.setSendServerVersion(false);
        configuration.setSendXPoweredBy(false);
        configuration.setRequestHeaderSize(LONGEST_HEAD_BYTES);
        return configuration;
    }

    private static void requirePort(int port) {
        if (port < 0 || port > 65_535) {
            throw new BadInputException(UNFIT, "There is no port %d. Give one from 0 to 65535.".formatted(port));
        }
    }

    private static void bind(ServerConnector connector, int port) {
        try {
            connector.open();
        } catch (IOException e) {
            if (e instanceof BindException || e.getCause() instanceof BindException) {
                throw new BadInputException(
                        UNFIT,
                        ("Port %d is taken, perhaps by Layshaft already running. Stop that, or choose another:"
                                        + " serve --port %d")
                                .formatted(port, port == 65_535 ? port - 1 : port + 1));
            }
            throw new IllegalStateException("The port %d cannot be opened.".formatted(port), e);
        }
    }

    private static void begin(Server server) {
        try {
            server.start();
        } catch (Exception e) {
            throw new IllegalStateException("The server does not start.", e);
        }
    }

    public URI address() {
        return URI.create("http://localhost:%d/".formatted(connector.getLocalPort()));
    }

    /** Waits until the server is stopped. */
    public void join() throws InterruptedException {
        server.join();
    }

    @Override
    public void close() {
        try {
            server.stop();
        } catch (Exception e) {
            throw new IllegalStateException("The server does not stop.", e);
        }
    }
}
