package dev.sunthread.web.compare;

import io.swagger.v3.oas.annotations.Parameter;
import org.jspecify.annotations.Nullable;

/** Questions whose answers are joined at one cut-off, and which of the things are listed, as parameters of an address. */
public record JoinedRequest(
        @Parameter(
                description = "Two or more questions as a JSON array; members are named as the parameters of a trace",
                example = "[{\"lot\": \"A-17\"}, {\"scope\": {\"of\": \"equipment\", \"equipment\": \"OVEN-2\"}}]")
        @Nullable
        String of,

        @Parameter(
                description =
                        "all: what is in every answer; only: what is in the first and in none of the others; open:"
                                + " what is in the first, and in others no more than possible or unproven")
        @Nullable
        Join join,

        @Parameter(description = "The ledger position up to which records count; absent for all of them") @Nullable
        Long cutoff,

        @Parameter(description = "Only this level, such as receiver or panel") @Nullable
        String level,

        @Parameter(description = "Only this class: certain, possible or unproven") @Nullable
        String certainty,

        @Parameter(description = "The page, from 1") @Nullable
        Integer page) {

    static final JoinedRequest NONE = new JoinedRequest(null, null, null, null, null, null);

    /** How answers are joined. */
    public enum Join {
        /** In every answer: with the weakest of its classes. */
        ALL,
        /** In the first and in no other, of whatever class: with its class there. */
        ONLY,
        /** In the first, and in another, but in none of the others certain: with its class in the first. */
        OPEN
    }

    boolean isAsked() {
        return of != null && !of.isBlank();
    }

    Join joined() {
        return join == null ? Join.ALL : join;
    }

    @Nullable
    String ofLevel() {
        return level == null || level.isBlank() ? null : level;
    }

    @Nullable
    String ofClass() {
        return certainty == null || certainty.isBlank() ? null : certainty.toUpperCase(java.util.Locale.ROOT);
    }
}
