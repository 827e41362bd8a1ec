package dev.sunthread.journal;

import dev.sunthread.ledger.EnvelopeHead;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.Kinds;
import dev.sunthread.ledger.body.FieldShape;
import dev.sunthread.ledger.body.Shape;
import java.util.Map;

/** Writes the reference of the journal format from the kinds themselves, after an introduction kept as text. */
final class JournalReference {

    private final StringBuilder text = new StringBuilder();
    private final Map<String, String> examples;

    private JournalReference(Map<String, String> examples) {
        this.examples = examples;
    }

    static String of(String introduction, Kinds kinds, Map<String, String> examples) {
        JournalReference reference = new JournalReference(examples);
        reference.text.append(introduction.formatted(fieldsOf(Shape.of(EnvelopeHead.class)), RawLine.LONGEST));
        reference.text.append("\n## Kinds\n\n");
        kinds.all().forEach(kind -> reference.text.append("- [%1$s](#%1$s)\n".formatted(kind.name())));
        kinds.all().forEach(reference::describe);
        return reference.text.toString();
    }

    private void describe(Kind<?> kind) {
        text.append("\n### %s\n\n%s\n\nVersion %d%s.\n\n"
                .formatted(
                        kind.name(),
                        kind.meaning(),
                        kind.version(),
                        kind.withdrawable() ? "" : "; an envelope of this kind can't be voided or corrected"));
        text.append(fieldsOf(Shape.of(kind.body())));
        text.append("\n```json\n").append(examples.get(kind.name())).append("\n```\n");
    }

    private static String fieldsOf(Shape<?> shape) {
        StringBuilder table = new StringBuilder("| field | | meaning | expected |\n|---|---|---|---|\n");
        describeFields(shape, "", table);
        return table.toString();
    }

    private static void describeFields(Shape<?> shape, String path, StringBuilder table) {
        for (FieldShape field : shape.fields()) {
            String name = path + field.name() + (field.list() ? "[]" : "");
            table.append("| `%s` | %s | %s | %s |\n"
                    .formatted(
                            name,
                            field.required() ? "required" : "optional",
                            field.described().value(),
                            field.expected()));
            Shape<?> inside = field.value().shape();
            if (inside != null) {
                describeFields(inside, name + ".", table);
            }
        }
    }
}
