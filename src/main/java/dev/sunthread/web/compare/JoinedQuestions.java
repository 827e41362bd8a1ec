package dev.sunthread.web.compare;

import com.fasterxml.jackson.annotation.JsonInclude;
import dev.sunthread.genealogy.Root;
import dev.sunthread.genealogy.Scope;
import dev.sunthread.genealogy.TraceQuestion;
import dev.sunthread.genealogy.Way;
import dev.sunthread.kernel.UnitId;
import dev.sunthread.ledger.body.JsonFault;
import dev.sunthread.ledger.body.Unreadable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Reads the questions of an address, and writes them into one. */
final class JoinedQuestions {

    private static final int MOST = 6;
    private static final String WRITTEN = "Write two to " + MOST
            + " questions, as in [{\"lot\": \"A-17\"}, {\"scope\": {\"of\": \"cure-run\", \"run\": \"C-0031\"}}]";

    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .changeDefaultPropertyInclusion(
                    all -> JsonInclude.Value.construct(JsonInclude.Include.NON_NULL, JsonInclude.Include.NON_NULL))
            .build();

    private record One(
            @Nullable String way,
            @Nullable String lot,
            @Nullable String supplierLot,
            @Nullable String item,
            @Nullable String serial,
            @Nullable String issuer,
            @Nullable Scope scope,
            @Nullable Boolean wider) {

        TraceQuestion asked() {
            Way asked = way == null ? Way.FORWARD : Way.valueOf(way.toUpperCase(Locale.ROOT));
            return new TraceQuestion(asked, root(), null, null, Boolean.TRUE.equals(wider));
        }

        private Root root() {
            if (lot != null) {
                return new Root.OfLot(lot);
            }
            if (supplierLot != null) {
                return new Root.OfSupplierLot(supplierLot);
            }
            if (scope != null) {
                return new Root.OfScope(scope);
            }
            if (item == null || serial == null) {
                throw new IllegalArgumentException("a question needs lot, supplierLot, scope, or item with serial");
            }
            return new Root.OfUnit(UnitId.of(issuer, item, serial));
        }
    }

    private JoinedQuestions() {}

    /** The questions, without a cut-off. @throws Unreadable if they are none, too few or too many */
    static List<TraceQuestion> read(String text) {
        try {
            One[] questions = JSON.readValue(text, One[].class);
            if (questions.length < 2 || questions.length > MOST) {
                throw Unreadable.at("of", "names " + questions.length + " questions", WRITTEN);
            }
            List<TraceQuestion> asked = new ArrayList<>();
            for (One question : questions) {
                asked.add(question.asked());
            }
            return asked;
        } catch (JacksonException e) {
            throw Unreadable.at("of", "can't be read: " + JsonFault.words(e), WRITTEN);
        } catch (IllegalArgumentException e) {
            throw Unreadable.at("of", "can't be read: " + e.getMessage(), WRITTEN);
        } catch (NullPointerException e) {
            throw Unreadable.at("of", "can't be read: one of them is null", WRITTEN);
        }
    }

    /** The questions with another one behind them; of a first one alone if none are given. */
    static String with(@Nullable String questions, ObjectNode another) {
        ArrayNode all = array(questions);
        all.add(another);
        return JSON.writeValueAsString(all);
    }

    /** The same with the question at this place first. */
    static String first(String questions, int place) {
        ArrayNode all = array(questions);
        JsonNode chosen = all.remove(place);
        all.insert(0, chosen);
        return JSON.writeValueAsString(all);
    }

    /** A question as kept beside its answer, without what is of that answer alone. */
    static ObjectNode kept(String asked) {
        ObjectNode question = (ObjectNode) JSON.readTree(asked);
        question.remove(List.of("cutoff", "at"));
        if (question.path("issuer").asString("").equals(UnitId.of(null, "", "").issuer())) {
            question.remove("issuer");
        }
        return question;
    }

    private static ArrayNode array(@Nullable String questions) {
        try {
            return questions == null || questions.isBlank()
                    ? JSON.createArrayNode()
                    : JSON.readValue(questions, ArrayNode.class);
        } catch (JacksonException e) {
            throw Unreadable.at("of", "can't be read: " + JsonFault.words(e), WRITTEN);
        }
    }
}
