package dev.sunthread.web.traffic;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.testing.SignedInAs;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.testing.Visitor;
import java.io.IOException;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;

/** Who sends slowly takes up no page of others; and what a request says of its host leads nobody there. */
@SunthreadTest(webEnvironment = WebEnvironment.RANDOM_PORT)
@SignedInAs({})
class SlowBodiesTests {

    private static final String SLOW = """
            POST /sign-in HTTP/1.1\r
            Host: 127.0.0.1\r
            Content-Type: application/x-www-form-urlencoded\r
            Content-Length: 1000\r
            \r
            name=""";

    @LocalServerPort
    int port;

    @Autowired
    TrafficProperties limits;

    private final List<Socket> open = new ArrayList<>();

    @AfterEach
    void close() throws IOException {
        for (Socket socket : open) {
            socket.close();
        }
    }

    @Test
    void pagesAnswerWhileManyBodiesAreSlow() throws Exception {
        for (int i = 0; i < 260; i++) {
            send(SLOW);
        }
        assertThat(new Visitor(port).open("/sign-in").statusCode()).isEqualTo(200);
        assertThat(new Visitor(port).open("/unit?item=RCV&serial=R1").statusCode())
                .isEqualTo(302);
        assertThat(open.stream().filter(SlowBodiesTests::isWaitedFor).count()).isEqualTo(limits.bodiesByAddress());
    }

    @Test
    void whatIsSentAtOnceIsTakenAgainOnceTheSlowOnesAreGone() throws Exception {
        for (int i = 0; i < limits.bodiesByAddress(); i++) {
            send(SLOW);
        }
        close();
        // whatever is told of the closed ones, a form that comes whole has its turn again
        Visitor visitor = new Visitor(port);
        int status = 503;
        for (int tries = 0; status == 503 && tries < 1000; tries++) {
            status = visitor.sendBare("/sign-in", Map.of("name", "a", "secret", "b"))
                    .statusCode();
        }
        assertThat(status).isNotEqualTo(503);
    }

    @Test
    void aForeignHostStandsInNoAnswer() throws Exception {
        for (String address :
                List.of("/", "/findings", "/sign-in", "/sign-in?to=/findings", "/badge", "/no-such-page")) {
            assertThat(whole("GET " + address + " HTTP/1.1\r\nHost: evil.example\r\nConnection: close\r\n\r\n"))
                    .startsWith("HTTP/1.1 ")
                    .doesNotContain("evil.example");
        }
        assertThat(whole("POST /sign-in HTTP/1.1\r\nHost: evil.example\r\nConnection: close\r\n"
                        + "Content-Type: application/x-www-form-urlencoded\r\nContent-Length: 6\r\n\r\nname=a"))
                .doesNotContain("evil.example");
    }

    private Socket send(String text) throws IOException {
        Socket socket = new Socket("127.0.0.1", port);
        open.add(socket);
        socket.getOutputStream().write(text.getBytes(StandardCharsets.US_ASCII));
        socket.getOutputStream().flush();
        return socket;
    }

    private String whole(String request) throws IOException {
        Socket socket = send(request);
        return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }

    /** Whether the server says nothing yet and keeps the connection. */
    private static boolean isWaitedFor(Socket socket) {
        try {
            socket.setSoTimeout(1);
            socket.getInputStream().read();
            return false;
        } catch (SocketTimeoutException e) {
            return true;
        } catch (IOException e) {
            return false;
        }
    }
}
