package dev.sunthread.access.signin;

import dev.sunthread.access.Asked;
import dev.sunthread.access.machine.Tokens;
import jakarta.servlet.DispatcherType;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.boot.autoconfigure.condition.ConditionalOnWebApplication;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.annotation.Order;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.AbstractHttpConfigurer;
import org.springframework.security.config.annotation.web.configurers.HeadersConfigurer;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.access.AccessDeniedHandler;
import org.springframework.security.web.access.intercept.AuthorizationFilter;
import org.springframework.security.web.header.writers.CrossOriginOpenerPolicyHeaderWriter.CrossOriginOpenerPolicy;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;
import org.springframework.security.web.savedrequest.NullRequestCache;
import org.springframework.web.servlet.HandlerExceptionResolver;

/** Two ways in: machines with a token and no session, persons with a session and protected forms. */
@Configuration(proxyBeanMethods = false)
@ConditionalOnWebApplication
class SecurityConfiguration {

    /** Nothing but what this application serves itself; no script or style within a page. */
    static final String CONTENT_POLICY =
            "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; font-src 'self';"
                    + " connect-src 'self'; media-src 'self'; worker-src 'self'; manifest-src 'self';"
                    + " form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    private static final String[] STATIC = {"/*.css", "/*.js", "/*.svg", "/webjars/**"};
    private static final String[] SIGNING_IN = {"/sign-in", "/badge"};

    /** For what stands before the application and asks whether it can be used; it says no more than that. */
    private static final String HEALTH = "/actuator/health/**";

    /** Pages at stations say here that they are there, without a session; there is nobody to be imitated. */
    private static final String CONTACT = "/contact";

    private final HandlerExceptionResolver answers;

    SecurityConfiguration(@Qualifier("handlerExceptionResolver") HandlerExceptionResolver answers) {
        this.answers = answers;
    }

    @Bean
    @Order(1)
    SecurityFilterChain machines(HttpSecurity http, Tokens tokens) {
        // a browser never sends a token by itself, so that no other site's page can make it do so
        return common(http)
                .securityMatcher(request -> Asked.token(request) != null)
                .addFilterBefore(new MachineFilter(tokens), AuthorizationFilter.class)
                .csrf(AbstractHttpConfigurer::disable)
                .sessionManagement(session -> session.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
                .authorizeHttpRequests(requests -> requests.dispatcherTypeMatchers(DispatcherType.ERROR)
                        .permitAll()
                        .anyRequest()
                        .authenticated())
                .exceptionHandling(asks -> asks.authenticationEntryPoint(
                        (request, response, why) -> answers.resolveException(request, response, null, why)))
                .build();
    }

    @Bean
    @Order(2)
    SecurityFilterChain persons(
            HttpSecurity http, SessionCallers sessions, SignInAnswers answer, AccessDeniedHandler denied) {
        return common(http)
                .securityContext(context -> context.securityContextRepository(sessions))
                .csrf(forms -> forms.ignoringRequestMatchers(CONTACT))
                .authorizeHttpRequests(requests -> requests.dispatcherTypeMatchers(DispatcherType.ERROR)
                        // what went wrong is told to whoever asked, and is no page to come back to
                        .permitAll()
                        .requestMatchers(STATIC)
                        .permitAll()
                        .requestMatchers(HEALTH)
                        .permitAll()
                        .requestMatchers(SIGNING_IN)
                        .permitAll()
                        .requestMatchers(CONTACT)
                        .permitAll()
                        .anyRequest()
                        .authenticated())
                .formLogin(form -> form.loginPage("/sign-in")
                        .usernameParameter("name")
                        .passwordParameter("secret")
                        .authenticationDetailsSource(SignInDetails::of)
                        .successHandler(answer::signedIn)
                        .failureHandler(answer::refused))
                .logout(out -> out.logoutUrl("/sign-out")
                        .addLogoutHandler(answer::signedOut)
                        .logoutSuccessUrl("/sign-in?told=left"))
                .exceptionHandling(asks -> asks.authenticationEntryPoint((request, response, why) -> {
                            if (Asked.byAProgram(request)) {
                                answers.resolveException(request, response, null, why);
                            } else {
                                answer.ask(request, response);
                            }
                        })
                        .accessDeniedHandler(denied))
                .build();
    }

    private static HttpSecurity common(HttpSecurity http) {
        return http.requestCache(cache -> cache.requestCache(new NullRequestCache()))
                .headers(SecurityConfiguration::headers);
    }

    private static void headers(HeadersConfigurer<HttpSecurity> headers) {
        headers.contentSecurityPolicy(policy -> policy.policyDirectives(CONTENT_POLICY))
                .referrerPolicy(policy -> policy.policy(ReferrerPolicy.SAME_ORIGIN))
                .crossOriginOpenerPolicy(policy -> policy.policy(CrossOriginOpenerPolicy.SAME_ORIGIN))
                .permissionsPolicyHeader(
                        policy -> policy.policy("camera=(), microphone=(), geolocation=(), payment=()"));
    }
}
