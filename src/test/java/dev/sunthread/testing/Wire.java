package dev.sunthread.testing;

import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The network between a browser and the application: a port that leads to another. It can be cut and mended, it can hold
 * what goes one way until it is let go, as a server does that hangs or is slow, and it can answer with an error itself.
 */
public final class Wire implements AutoCloseable {

    private static final InetAddress HERE = InetAddress.getLoopbackAddress();
    private static final int SOME = 65_536;

    private final int to;
    private final int port;
    private final Set<Socket> open = ConcurrentHashMap.newKeySet();
    private final Gate requests = new Gate();
    private final Gate answers = new Gate();
    private volatile ServerSocket listening;
    private volatile boolean failing;

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

    /** Takes what is sent, and delivers nothing of it until {@link #letGo}. */
    public void holdRequests() {
        requests.shut();
    }

    /** Delivers what is sent, and holds every answer until {@link #letGo}. */
    public void holdAnswers() {
        answers.shut();
    }

    /** Delivers what was held. */
    public void letGo() {
        requests.open();
        answers.open();
    }

    /** From now on answers every request with 500 by itself, or no longer. */
    public void fail(boolean fails) throws IOException {
        failing = fails;
        for (Socket socket : open) {
            socket.close();
        }
    }

    private void start(ServerSocket server) {
        run(() -> {
            while (!server.isClosed()) {
                Socket in = server.accept();
                if (failing) {
                    run(() -> answerFailure(in));
                    continue;
                }
                Socket out = new Socket(HERE, to);
                open.add(in);
                open.add(out);
                run(() -> carry(in, out, requests));
                run(() -> carry(out, in, answers));
            }
        });
    }

    private static void answerFailure(Socket in) throws IOException {
        try (in) {
            in.getInputStream().read(new byte[SOME]);
            in.getOutputStream()
                    .write("HTTP/1.1 500 \r\nContent-Length: 0\r\nConnection: close\r\n\r\n"
                            .getBytes(StandardCharsets.US_ASCII));
        }
    }

    private void carry(Socket from, Socket into, Gate gate) throws IOException {
        try (from;
                into;
                InputStream bytes = from.getInputStream()) {
            byte[] some = new byte[SOME];
            for (int read = bytes.read(some); read >= 0; read = bytes.read(some)) {
                gate.pass();
                into.getOutputStream().write(some, 0, read);
            }
        } finally {
            open.remove(from);
            open.remove(into);
        }
    }

    /** Lets through, or holds whoever comes until it is opened. */
    private static final class Gate {

        private boolean isShut;

        synchronized void shut() {
            isShut = true;
        }

        synchronized void open() {
            isShut = false;
            notifyAll();
        }

        synchronized void pass() throws IOException {
            try {
                while (isShut) {
                    wait();
                }
            } catch (InterruptedException e) {
                throw new IOException(e);
            }
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
        letGo();
        cut();
    }
}
