package dev.sunthread.access.web;

import io.swagger.v3.oas.annotations.OpenAPIDefinition;
import io.swagger.v3.oas.annotations.enums.SecuritySchemeType;
import io.swagger.v3.oas.annotations.info.Info;
import io.swagger.v3.oas.annotations.security.SecurityRequirement;
import io.swagger.v3.oas.annotations.security.SecurityScheme;
import io.swagger.v3.oas.annotations.servers.Server;
import org.springframework.context.annotation.Configuration;

/** Says in the description of the interface how a program proves who it is. */
@Configuration(proxyBeanMethods = false)
@OpenAPIDefinition(
        info = @Info(title = "Sunthread", version = "v1"),
        // the address it was asked at, whatever a request says of its host
        servers = @Server(url = "/"),
        security = @SecurityRequirement(name = TokenScheme.NAME))
@SecurityScheme(
        name = TokenScheme.NAME,
        type = SecuritySchemeType.HTTP,
        scheme = "bearer",
        description =
                "A token that an administrator made on the page Machines. Each may do only what was ticked for it.")
class TokenScheme {

    static final String NAME = "token";
}
