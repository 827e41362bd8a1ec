package dev.sunthread.access;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.authentication;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.request;

import dev.sunthread.testing.SignedInAs;
import dev.sunthread.testing.SignedInPerson;
import dev.sunthread.testing.SunthreadTest;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.HttpMethod;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.web.method.HandlerMethod;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;

/**
 * Every address of the application, asked for by every role, is answered as the document on rights says. Run with
 * {@code -Dsunthread.docs.write=true} to write the table anew; then read what changed.
 */
@SunthreadTest
@SignedInAs({})
class AddressMatrixTests {

    private static final Matrix MATRIX = new Matrix("address");

    @Autowired
    RequestMappingHandlerMapping requestMappingHandlerMapping;

    @Autowired
    MockMvc pages;

    @Test
    void everyAddressAnswersEveryRoleAsDocumented() throws Exception {
        Map<String, String> found = new TreeMap<>();
        for (String address : addresses()) {
            found.put(address, Matrix.cells(allowed(address)));
        }
        if (Boolean.getBoolean("sunthread.docs.write")) {
            MATRIX.write(found);
        }
        assertThat(MATRIX.documented()).isEqualTo(found);
    }

    @Test
    void nobodyGetsAnywhereWithoutSigningIn() throws Exception {
        for (String address : addresses()) {
            var answer = pages.perform(asked(address)).andReturn().getResponse();
            boolean leadsToSignIn = answer.getStatus() == 302
                    && String.valueOf(answer.getRedirectedUrl()).startsWith("/sign-in");
            assertThat(leadsToSignIn || answer.getStatus() == 401)
                    .as(address + " answers " + answer.getStatus())
                    .isNotEqualTo(List.of("GET /sign-in", "GET /badge", "POST /badge", "POST /contact")
                            .contains(address));
        }
    }

    @Test
    void anAuditorChangesNothingButTheOwnAccount() throws Exception {
        for (String address : addresses()) {
            boolean isOfTheReaderAlone = address.contains("/account/")
                    || List.of(
                                    "POST /badge",
                                    "POST /contact",
                                    "POST /language",
                                    "POST /trace/stop",
                                    "POST /compare/joined/stop")
                            .contains(address);
            if (!address.startsWith("GET ") && !isOfTheReaderAlone) {
                assertThat(allows(address, Role.AUDITOR)).as(address).isFalse();
            }
        }
    }

    @Test
    void anAuditorReadsEverythingButThePagesThatOnlyRecord() throws Exception {
        for (String address : addresses()) {
            if (address.startsWith("GET ")) {
                assertThat(allows(address, Role.AUDITOR))
                        .as(address)
                        .isNotEqualTo(List.of(
                                        "GET /device",
                                        "GET /work",
                                        "GET /work/damaged",
                                        "GET /work/shell",
                                        "GET /receipts/new",
                                        "GET /forms/new")
                                .contains(address));
            }
        }
    }

    private List<String> addresses() {
        List<String> addresses = new ArrayList<>();
        requestMappingHandlerMapping.getHandlerMethods().forEach((mapping, handler) -> {
            if (!isOfTheFramework(handler)) {
                addresses.addAll(addresses(mapping));
            }
        });
        assertThat(addresses).hasSizeGreaterThan(50);
        return addresses;
    }

    /** What shows the error of another request. */
    private static boolean isOfTheFramework(HandlerMethod handler) {
        return handler.getBeanType().getName().startsWith("org.springframework.");
    }

    private static List<String> addresses(RequestMappingInfo mapping) {
        // a mapping without a method would answer all of them
        assertThat(mapping.getMethodsCondition().getMethods())
                .as(mapping.toString())
                .isNotEmpty();
        return mapping.getMethodsCondition().getMethods().stream()
                .flatMap(method -> mapping.getPatternValues().stream().map(path -> method + " " + path))
                .toList();
    }

    private List<Boolean> allowed(String address) throws Exception {
        List<Boolean> allowed = new ArrayList<>();
        for (Role role : Role.values()) {
            allowed.add(allows(address, role));
        }
        return allowed;
    }

    private boolean allows(String address, Role role) throws Exception {
        return pages.perform(asked(address).with(authentication(SignedInPerson.of(role))))
                        .andReturn()
                        .getResponse()
                        .getStatus()
                != 403;
    }

    private static MockHttpServletRequestBuilder asked(String address) {
        String[] words = address.split(" ");
        return request(HttpMethod.valueOf(words[0]), words[1].replaceAll("\\{[^}]+}", "x"))
                .contentType(words[1].contains("/envelopes") ? MediaType.APPLICATION_JSON : MediaType.TEXT_PLAIN)
                .content("{}");
    }
}
