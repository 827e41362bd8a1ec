package dev.sunthread.web.compare;

import dev.sunthread.ledger.body.JsonFault;
import dev.sunthread.ledger.body.Unreadable;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** A question that a form adds to those joined: a kept answer's, twice, or what a person typed. */
record AddedQuestion(
        @Nullable String left,
        @Nullable String right,
        @Nullable String lot,
        @Nullable String supplierLot,
        @Nullable String item,
        @Nullable String serial,
        @Nullable String scope) {

    boolean isOfKept() {
        return given(left) && given(right);
    }

    boolean isTyped() {
        return given(lot) || given(supplierLot) || given(serial) || given(scope);
    }

    ObjectNode typed() {
        ObjectNode question = JsonMapper.shared().createObjectNode();
        put(question, "lot", lot);
        put(question, "supplierLot", supplierLot);
        put(question, "item", item);
        put(question, "serial", serial);
        if (given(scope)) {
            try {
                question.set("scope", JsonMapper.shared().readTree(String.valueOf(scope)));
            } catch (JacksonException e) {
                throw Unreadable.at(
                        "scope",
                        "cannot be read: " + JsonFault.words(e),
                        "Write it as in {\"of\": \"lot\", \"lot\": \"L-0417\"}; the reference of scopes lists every kind");
            }
        }
        return question;
    }

    private static void put(ObjectNode question, String name, @Nullable String value) {
        if (value != null && given(value)) {
            question.put(name, value.strip());
        }
    }

    private static boolean given(@Nullable String text) {
        return text != null && !text.isBlank();
    }
}
