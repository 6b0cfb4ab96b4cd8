package heapwright.web;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.SocketException;
import java.net.UnknownHostException;

/** The server cannot listen where it was told to. */
public final class CannotListenException extends RuntimeException {

    /** Below it, systems commonly leave ports to their administrator alone. */
    private static final int FIRST_FREE_PORT = 1024;

    private static final int PATIENCE_MS = 500;

    private final Why why;
    private final WebOptions options;

    private CannotListenException(Why why, WebOptions options, Throwable cause) {
        super("Cannot listen on " + options.host() + ", port " + options.port() + ": " + why, cause);
        this.why = why;
        this.options = options;
    }

    /** The true reason. */
    public enum Why {
        /** No address is known by the name. */
        NAME_UNKNOWN,
        /** The address is none of this machine. */
        ADDRESS_ELSEWHERE,
        /** The system leaves the port to its administrator. */
        PORT_RESERVED,
        /** Another program has the port. */
        PORT_TAKEN
    }

    /** @throws CannotListenException when the host is none of this machine; said before anything is started */
    static void checkHost(WebOptions options) {
        InetAddress address = address(options);
        if (!own(address)) {
            throw new CannotListenException(Why.ADDRESS_ELSEWHERE, options, null);
        }
    }

    /** Finds out why a port of this machine cannot be had; the words of the system differ with its kind and language. */
    static CannotListenException after(Throwable cause, WebOptions options) {
        boolean reserved = options.port() < FIRST_FREE_PORT && !answers(address(options), options.port());
        return new CannotListenException(reserved ? Why.PORT_RESERVED : Why.PORT_TAKEN, options, cause);
    }

    private static InetAddress address(WebOptions options) {
        try {
            return InetAddress.getByName(options.host());
        } catch (UnknownHostException e) {
            throw new CannotListenException(Why.NAME_UNKNOWN, options, e);
        }
    }

    private static boolean own(InetAddress address) {
        try {
            return address.isAnyLocalAddress()
                    || address.isLoopbackAddress()
                    || NetworkInterface.getByInetAddress(address) != null;
        } catch (SocketException e) {
            return false;
        }
    }

    private static boolean answers(InetAddress address, int port) {
        InetAddress here = address.isAnyLocalAddress() ? InetAddress.getLoopbackAddress() : address;
        try (Socket socket = new Socket()) {
            socket.connect(new InetSocketAddress(here, port), PATIENCE_MS);
            return true;
        } catch (IOException nobody) {
            return false;
        }
    }

    public Why why() {
        return why;
    }

    /** Where it was told to listen. */
    public WebOptions options() {
        return options;
    }
}
