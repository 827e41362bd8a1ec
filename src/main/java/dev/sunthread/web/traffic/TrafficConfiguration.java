package dev.sunthread.web.traffic;

import java.time.Clock;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.boot.tomcat.servlet.TomcatServletWebServerFactory;
import org.springframework.boot.web.server.WebServerFactoryCustomizer;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;

/** Has the server keep the limits of an address. */
@Configuration(proxyBeanMethods = false)
@EnableConfigurationProperties(TrafficProperties.class)
class TrafficConfiguration {

    /** Behind all other settings: an address is that of the client where a proxy in front is known. */
    @Bean
    @Order(Ordered.LOWEST_PRECEDENCE)
    WebServerFactoryCustomizer<TomcatServletWebServerFactory> traffic(TrafficProperties properties, Clock clock) {
        return server -> {
            server.setProtocol(LimitedHttp.class.getName());
            server.addConnectorCustomizers(connector -> {
                if (connector.getProtocolHandler() instanceof LimitedHttp http) {
                    http.limit(properties.connectionsByAddress());
                }
            });
            server.addEngineValves(new SlowBodies(properties, clock));
        };
    }
}
