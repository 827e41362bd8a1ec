package dev.sunthread.web.traffic;

import org.apache.coyote.http11.Http11NioProtocol;

/** HTTP/1.1 that takes a limited number of connections from each address; the server makes it by its name. */
public final class LimitedHttp extends Http11NioProtocol {

    private final LimitedEndpoint endpoint;

    public LimitedHttp() {
        this(new LimitedEndpoint());
    }

    private LimitedHttp(LimitedEndpoint endpoint) {
        super(endpoint);
        this.endpoint = endpoint;
    }

    void limit(int byAddress) {
        endpoint.limit(byAddress);
    }
}
