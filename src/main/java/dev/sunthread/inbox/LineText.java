package dev.sunthread.inbox;

import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.TokenStreamContext;
import tools.jackson.databind.json.JsonMapper;

/**
 * What the text of a kept line says, as far as it can be read: each text in it with its field. Where a line breaks off
 * or is no JSON from somewhere on, the rest is looked through for names, of which nobody knows what they are part of.
 *
 * @param isWhole whether all of it could be read
 * @param ended the fields of the lists that could be read to their end
 */
public record LineText(List<Said> said, boolean isWhole, Set<String> ended) {

    /** The place of a text whose surroundings can't be read. */
    public static final String SOMEWHERE = "?.";

    private static final JsonMapper JSON = JsonMapper.shared();
    private static final Pattern ANYWHERE =
            Pattern.compile("\"([A-Za-z]{1,40})\"\\s*+:\\s*+(?:\\[\\s*+)?+\"([^\"\\\\]{1,64})\"");

    /**
     * One text of a line.
     *
     * @param field where it stands, with a dot between a field and what it is part of; the body of an envelope, and the
     *     body that a correction tells anew, are left out
     * @param within the one object that it stands in, for a field may be there many times
     */
    public record Said(String field, String within, String text) {

        /** The field's own name. */
        public String name() {
            return field.substring(field.lastIndexOf('.') + 1);
        }
    }

    public static LineText of(String text) {
        List<Said> said = new ArrayList<>();
        Set<String> ended = new HashSet<>();
        boolean isWhole = false;
        int read = 0;
        try (JsonParser parser = JSON.createParser(text)) {
            JsonToken token = parser.nextToken();
            while (token != null) {
                if (token == JsonToken.VALUE_STRING || token.isNumeric()) {
                    said.add(said(parser.streamReadContext(), parser.getString()));
                } else if (token == JsonToken.END_ARRAY) {
                    ended.add(field(parser.streamReadContext()));
                }
                read = (int) parser.currentLocation().getCharOffset();
                token = parser.nextToken();
            }
            isWhole = true;
        } catch (JacksonException brokenFromHereOn) {
            ANYWHERE.matcher(text.substring(Math.min(read, text.length())))
                    .results()
                    .map(found -> somewhere(found.group(1), found.group(2)))
                    .forEach(said::add);
        }
        return new LineText(List.copyOf(said), isWhole, Set.copyOf(ended));
    }

    /** Whether it broke off before the end of this list, which may go on with anything. */
    public boolean brokeOffBeforeTheEndOf(String list) {
        return !isWhole && !ended.contains(list);
    }

    /** A text whose surroundings nobody can read. */
    public static Said somewhere(String name, String text) {
        return new Said(SOMEWHERE + name, SOMEWHERE, text);
    }

    private static Said said(TokenStreamContext place, String text) {
        TokenStreamContext around = place.inObject() ? place : place.getParent();
        return new Said(field(place), String.valueOf(around.pathAsPointer().head()), text);
    }

    private static String field(TokenStreamContext place) {
        Deque<String> names = new ArrayDeque<>();
        for (TokenStreamContext at = place; at != null; at = at.getParent()) {
            if (at.inObject() && at.currentName() != null) {
                names.addFirst(at.currentName());
            }
        }
        while (names.size() > 1 && "body".equals(names.peekFirst())) {
            names.removeFirst();
        }
        return String.join(".", names);
    }

    /** The kind of the happening; absent if it can't be read, or more than one may be meant. */
    public Optional<String> kind() {
        return one("kind").findFirst();
    }

    /** When it happened. */
    public @Nullable OffsetDateTime occurredAt() {
        return time(one("occurredAt"));
    }

    /** When what a correction tells anew really happened, if it says so. */
    public @Nullable OffsetDateTime reallyOccurredAt() {
        return time(said.stream()
                .filter(one -> one.field().equals("occurredAt") && one.within().equals("/body"))
                .map(Said::text));
    }

    /** When it began. */
    public @Nullable OffsetDateTime startedAt() {
        return time(one("startedAt"));
    }

    /** The only text of a field at the top of the line or its body; absent if there is none, or several. */
    public Stream<String> one(String name) {
        List<String> found = Stream.of(name, SOMEWHERE + name)
                .map(this::in)
                .filter(texts -> !texts.isEmpty())
                .findFirst()
                .orElse(List.of());
        return found.size() == 1 ? found.stream() : Stream.empty();
    }

    private List<String> in(String field) {
        return said.stream()
                .filter(one -> one.field().equals(field))
                .map(Said::text)
                .distinct()
                .toList();
    }

    private static @Nullable OffsetDateTime time(Stream<String> text) {
        try {
            return text.findFirst().map(OffsetDateTime::parse).orElse(null);
        } catch (DateTimeParseException unreadable) {
            return null;
        }
    }
}
