package dev.sunthread.testing;

import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** The network between a browser and the application, which can be cut and mended: a port that leads to another. */
public final class Wire implements AutoCloseable {

    private static final InetAddress HERE = InetAddress.getLoopbackAddress();

    private final int to;
    private final int port;
    private final Set<Socket> open = ConcurrentHashMap.newKeySet();
    private volatile ServerSocket listening;

    public Wire(int to) throws IOException {
        this.to = to;
        this.listening = new ServerSocket(0, 50, HERE);
        this.port = listening.getLocalPort();
        start(listening);
    }

    /** The port to ask instead of the application's own. */
    public int port() {
        return port;
    }

    /** Ends every connection and takes no more. */
    public void cut() throws IOException {
        listening.close();
        for (Socket socket : open) {
            socket.close();
        }
    }

    /** Takes connections again. */
    public void mend() throws IOException {
        listening = new ServerSocket();
        listening.setReuseAddress(true);
        listening.bind(new InetSocketAddress(HERE, port));
        start(listening);
    }

    private void start(ServerSocket server) {
        run(() -> {
            while (!server.isClosed()) {
                Socket in = server.accept();
                Socket out = new Socket(HERE, to);
                open.add(in);
                open.add(out);
                run(() -> carry(in, out));
                run(() -> carry(out, in));
            }
        });
    }

    private void carry(Socket from, Socket into) throws IOException {
        try (from;
                into;
                InputStream bytes = from.getInputStream()) {
            bytes.transferTo(into.getOutputStream());
        } finally {
            open.remove(from);
            open.remove(into);
        }
    }

    private interface Work {
        void run() throws IOException;
    }

    private static void run(Work work) {
        Thread thread = new Thread(() -> {
            try {
                work.run();
            } catch (IOException cut) {
                // a cut wire ends what it carried
            }
        });
        thread.setDaemon(true);
        thread.start();
    }

    @Override
    public void close() throws IOException {
        cut();
    }
}
