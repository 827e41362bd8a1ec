package dev.sunthread.web.traffic;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.channels.SocketChannel;
import org.apache.tomcat.util.net.NioEndpoint;
import org.apache.tomcat.util.net.SocketWrapperBase;
import org.jspecify.annotations.Nullable;

/** Takes connections, and closes those at once that come from an address which has many open already. */
final class LimitedEndpoint extends NioEndpoint {

    private volatile int most = Integer.MAX_VALUE;

    void limit(int byAddress) {
        most = byAddress;
    }

    @Override
    protected boolean setSocketOptions(SocketChannel socket) {
        InetAddress address = address(socket);
        return (address == null || open(address.getHostAddress()) < most) && super.setSocketOptions(socket);
    }

    private long open(String address) {
        return getConnections().stream()
                .map(SocketWrapperBase::getRemoteAddr)
                .filter(address::equals)
                .count();
    }

    private static @Nullable InetAddress address(SocketChannel socket) {
        try {
            return socket.getRemoteAddress() instanceof InetSocketAddress remote ? remote.getAddress() : null;
        } catch (IOException e) {
            // it is gone already; whoever reads from it is told
            return null;
        }
    }
}
