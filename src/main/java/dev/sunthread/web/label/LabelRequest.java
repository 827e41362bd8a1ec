package dev.sunthread.web.label;

import dev.sunthread.scan.label.Symbology;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;

/**
 * Which label is asked for, and how it is to be printed.
 *
 * @param name the serial of a unit, the number, label or code of anything else
 * @param station of a position
 * @param size the name of a size; the first there is if absent
 * @param skip how many places of the first sheet are used already
 */
public record LabelRequest(
        @NotNull LabelOf of,

        @NotBlank @Size(max = 64) String name,

        @Size(max = 64) @Nullable String item,
        @Size(max = 64) @Nullable String issuer,
        @Size(max = 64) @Nullable String station,
        @Nullable String size,
        @Nullable Symbology code,

        @Min(1) @Max(1000) @Nullable Integer copies,

        @Min(0) @Max(1000) @Nullable Integer skip) {

    public Symbology symbology() {
        return code == null ? Symbology.DATA_MATRIX : code;
    }

    int howMany() {
        return copies == null ? 1 : copies;
    }

    int skipped() {
        return skip == null ? 0 : skip;
    }
}
