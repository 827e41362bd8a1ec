package dev.sunthread;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.boot.web.server.context.WebServerApplicationContext;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/** Tells the operator, once the application answers, which address to open and who can reach it. */
@Component
class StartMessage {

    private static final Logger LOG = LoggerFactory.getLogger(StartMessage.class);
    private static final String LOOPBACK = "127.0.0.1";

    private final String address;

    StartMessage(@Value("${server.address}") String address) {
        this.address = address;
    }

    @EventListener
    void print(ApplicationReadyEvent ready) {
        if (ready.getApplicationContext() instanceof WebServerApplicationContext context
                && context.getWebServer() != null) {
            LOG.info(text(address, context.getWebServer().getPort()));
        }
    }

    static String text(String address, int port) {
        if (address.equals(LOOPBACK)) {
            return "Open http://%s:%d/ on this machine. No other machine can; README.md says how to let others in."
                    .formatted(LOOPBACK, port);
        }
        return "Open http://%s:%d/ on this machine. Other machines can too, through %s: passwords need HTTPS on the way."
                .formatted(LOOPBACK, port, address);
    }
}
