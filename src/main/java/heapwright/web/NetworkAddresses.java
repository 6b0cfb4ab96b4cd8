package heapwright.web;

import java.io.IOException;
import java.net.DatagramSocket;
import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.util.List;
import java.util.stream.Stream;

/** The addresses in figures by which other devices of the same network reach this machine. */
final class NetworkAddresses {

    /** An address that RFC 5737 keeps for examples. Nothing is sent to it; the system only tells by which way it would be. */
    private static final byte[] ELSEWHERE = {(byte) 192, 0, 2, 1};

    private static final int ANY_PORT = 9;

    private NetworkAddresses() {}

    /** All of them, that of the usual way out first; empty where this machine is in no network. */
    static List<String> all() {
        return Stream.concat(wayOut(), listed()).distinct().toList();
    }

    private static Stream<String> wayOut() {
        try (DatagramSocket socket = new DatagramSocket()) {
            socket.connect(new InetSocketAddress(InetAddress.getByAddress(ELSEWHERE), ANY_PORT));
            return Stream.of(socket.getLocalAddress())
                    .filter(NetworkAddresses::useful)
                    .map(InetAddress::getHostAddress);
        } catch (IOException noWay) {
            return Stream.empty();
        }
    }

    private static Stream<String> listed() {
        try {
            return NetworkInterface.networkInterfaces()
                    .filter(NetworkAddresses::up)
                    .flatMap(NetworkInterface::inetAddresses)
                    .filter(NetworkAddresses::useful)
                    .map(InetAddress::getHostAddress)
                    .sorted();
        } catch (SocketException none) {
            return Stream.empty();
        }
    }

    private static boolean up(NetworkInterface network) {
        try {
            return network.isUp() && !network.isLoopback() && !network.isPointToPoint();
        } catch (SocketException gone) {
            return false;
        }
    }

    /** Every home network still gives out addresses of the old kind, which can also be typed. */
    private static boolean useful(InetAddress address) {
        return address instanceof Inet4Address
                && !address.isAnyLocalAddress()
                && !address.isLoopbackAddress()
                && !address.isLinkLocalAddress();
    }
}
