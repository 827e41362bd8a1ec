package dev.sunthread.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import dev.sunthread.access.Role;
import dev.sunthread.testing.SignedInAs;
import dev.sunthread.testing.SunthreadTest;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.core.MethodParameter;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.method.HandlerMethod;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import tools.jackson.databind.json.JsonMapper;

/** No address that is read answers that the program is at fault, whatever text stands in it. */
@SunthreadTest
@SignedInAs({Role.OPERATOR, Role.QUALITY, Role.PROCESS, Role.AUDITOR, Role.ADMINISTRATOR})
class HostileTextTests {

    private static final List<String> TEXTS = List.of(
            "\0",
            "A\0B",
            "'",
            "\"",
            "%",
            "\\",
            "{",
            "[]",
            "null",
            "-1",
            "99999999999999999999",
            "1e999",
            "2026-13-45T99:00",
            "0000-01-01T00:00",
            "+999999999-12-31T23:59:59Z",
            "\uD835\uDD4F",
            "\uD800",
            "\u202E",
            "x".repeat(5000),
            "{\"of\":\"any\",\"scopes\":[]}",
            "{\"of\":\"lot\"}");

    @Autowired
    RequestMappingHandlerMapping requestMappingHandlerMapping;

    @Autowired
    MockMvc pages;

    @Test
    void noTextInAnAddressIsTheProgramsFault() {
        List<String> faults = new ArrayList<>();
        addresses(RequestMethod.GET).forEach((address, parameters) -> {
            ask(address, Map.of()).ifPresent(faults::add);
            for (String parameter : parameters) {
                TEXTS.forEach(text -> ask(address, Map.of(parameter, text)).ifPresent(faults::add));
            }
        });
        assertThat(faults).isEmpty();
    }

    @Test
    void aFormSentWithoutItsFieldsIsNotTheProgramsFault() {
        List<String> faults = new ArrayList<>();
        addresses(RequestMethod.POST).keySet().stream()
                .flatMap(address -> send(post(path(address)), address, Map.of()).stream())
                .forEach(faults::add);
        assertThat(faults).isEmpty();
    }

    @Test
    void noTextOfAnEnvelopeOrScanIsTheProgramsFault() {
        List<String> faults = new ArrayList<>();
        for (String text : TEXTS) {
            String written = JsonMapper.shared().writeValueAsString(text);
            List.of("do", "told")
                    .forEach(how ->
                            tell("/api/v1/envelopes/" + how, envelope(written)).ifPresent(faults::add));
            tell("/api/v1/journal/import?file=a.ndjson", envelope(written)).ifPresent(faults::add);
            tell("/api/v1/scans", "[{\"id\": \"s-1\", \"text\": " + written + ", \"kept\": true}]")
                    .ifPresent(faults::add);
        }
        assertThat(faults).isEmpty();
    }

    private static String envelope(String text) {
        return """
                {"id": "e-1", "kind": "birth", "version": 1, "occurredAt": "2026-03-02T10:00:00+01:00", "actor": "op-1",
                 "source": %s, "body": {"station": %s, "units": [{"item": %s, "serial": %s}]}}
                """.formatted(text, text, text, text).replace("\n", "");
    }

    private Optional<String> tell(String address, String body) {
        return send(
                post(address)
                        .contentType(address.contains("import") ? MediaType.TEXT_PLAIN : MediaType.APPLICATION_JSON)
                        .content(body),
                address,
                Map.of("", body));
    }

    private Optional<String> ask(String address, Map<String, String> given) {
        return send(get(path(address)), address, given);
    }

    private static String path(String address) {
        return address.replaceAll("\\{[^}]*}", "1");
    }

    private Optional<String> send(MockHttpServletRequestBuilder request, String address, Map<String, String> given) {
        try {
            given.forEach(request::param);
            int status = pages.perform(request).andReturn().getResponse().getStatus();
            return status < 500 ? Optional.empty() : Optional.of(address + " " + shown(given) + " " + status);
        } catch (Exception e) {
            Throwable cause = e.getCause() == null ? e : e.getCause();
            return Optional.of(address + " " + shown(given) + " " + cause);
        }
    }

    private static String shown(Map<String, String> given) {
        String all = given.toString().replace("\0", "\\0");
        return all.substring(0, Math.min(all.length(), 80));
    }

    /** The addresses that take this method, with the names of their parameters. */
    private Map<String, Set<String>> addresses(RequestMethod method) {
        Map<String, Set<String>> addresses = new TreeMap<>();
        requestMappingHandlerMapping.getHandlerMethods().forEach((mapping, handler) -> {
            if (mapping.getMethodsCondition().getMethods().contains(method)) {
                mapping.getPatternValues()
                        .forEach(address -> addresses
                                .computeIfAbsent(address, any -> new TreeSet<>())
                                .addAll(parameters(handler)));
            }
        });
        return addresses;
    }

    private static Set<String> parameters(HandlerMethod handler) {
        Set<String> names = new TreeSet<>(Set.of("format", "table", "page"));
        for (MethodParameter parameter : handler.getMethodParameters()) {
            if (!parameter.hasParameterAnnotation(RequestHeader.class)
                    && !parameter.hasParameterAnnotation(PathVariable.class)) {
                names(parameter.getParameter().getName(), parameter.getParameterType())
                        .forEach(names::add);
            }
        }
        return names;
    }

    private static Stream<String> names(String name, Class<?> type) {
        return type.isRecord() && type.getName().startsWith("dev.sunthread")
                ? Arrays.stream(type.getRecordComponents()).map(RecordComponent::getName)
                : Stream.of(name);
    }
}
