package dev.sunthread.paper.form;

import dev.sunthread.catalog.Caution;
import dev.sunthread.paper.FormKind;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What one record asks for.
 *
 * @param item the item whose route has the operation, if it is for one
 * @param name what the operation is called, or nothing
 * @param cautions what to beware of
 * @param boxes its boxes in their order, beside times and signature
 */
public record Form(
        FormKind kind,
        String station,
        @Nullable String item,
        @Nullable String operation,
        @Nullable String name,
        Collection<Caution> cautions,
        List<Box> boxes) {

    public Optional<Box> box(String wanted) {
        return boxes.stream().filter(box -> box.name().equals(wanted)).findFirst();
    }
}
