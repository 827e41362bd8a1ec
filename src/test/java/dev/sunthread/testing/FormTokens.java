package dev.sunthread.testing;

import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.boot.webmvc.test.autoconfigure.MockMvcBuilderCustomizer;
import org.springframework.context.annotation.Bean;

/** Gives every request of {@code MockMvc} the token that a form of a page would carry. */
@TestConfiguration(proxyBeanMethods = false)
class FormTokens {

    @Bean
    MockMvcBuilderCustomizer formTokens() {
        return builder -> builder.defaultRequest(get("/").with(csrf()));
    }
}
