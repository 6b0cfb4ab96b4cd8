package heapwright.web.guard;

import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.UnknownHostException;

/** Addresses in figures, of either kind. A name is never looked up: whoever keeps its zone could make it mean anything. */
public final class Addresses {

    private static final String FIGURES = "[0-9.]+|\\[?[0-9a-fA-F:.]*:[0-9a-fA-F:.]*(%[0-9A-Za-z._-]+)?]?";

    private Addresses() {}

    /** Whether a server that listens there listens on every address of this machine: {@code 0.0.0.0} or {@code ::}. */
    public static boolean everywhere(String host) {
        InetAddress address = address(host);
        return address != null && address.isAnyLocalAddress();
    }

    /** Whether only this machine reaches it. */
    public static boolean loopback(String host) {
        InetAddress address = address(host);
        return host.equalsIgnoreCase("localhost") || address != null && address.isLoopbackAddress();
    }

    /** Whether it is an address of this machine. */
    public static boolean own(String host) {
        InetAddress address = address(host);
        if (address == null) {
            return false;
        }
        try {
            return address.isLoopbackAddress() || NetworkInterface.getByInetAddress(address) != null;
        } catch (SocketException e) {
            return false;
        }
    }

    private static InetAddress address(String host) {
        if (!host.matches(FIGURES)) {
            return null;
        }
        try {
            return InetAddress.getByName(host);
        } catch (UnknownHostException e) {
            return null;
        }
    }
}
