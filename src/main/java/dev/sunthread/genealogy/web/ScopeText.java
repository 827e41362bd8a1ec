package dev.sunthread.genealogy.web;

import com.fasterxml.jackson.annotation.JsonInclude;
import dev.sunthread.genealogy.Scope;
import dev.sunthread.ledger.body.JsonFault;
import dev.sunthread.ledger.body.Unreadable;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** Reads a scope as people and programs write it. */
final class ScopeText {

    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .changeDefaultPropertyInclusion(
                    all -> JsonInclude.Value.construct(JsonInclude.Include.NON_NULL, JsonInclude.Include.NON_NULL))
            .build();

    private ScopeText() {}

    static String write(Scope scope) {
        return JSON.writeValueAsString(scope);
    }

    /** @throws Unreadable if it is no scope, with what is wrong */
    static Scope read(String text) {
        try {
            Scope scope = JSON.readValue(text, Scope.class);
            if (scope == null) {
                throw unreadable("it is null");
            }
            return scope;
        } catch (JacksonException e) {
            throw unreadable(JsonFault.words(e));
        }
    }

    private static Unreadable unreadable(String why) {
        return Unreadable.at(
                "scope",
                "cannot be read: " + why,
                "Write it as in {\"of\": \"lot\", \"lot\": \"L-0417\"}; the reference of scopes lists every kind");
    }
}
