package dev.sunthread.web.label;

import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;

/**
 * How many of the next serials of an item a person asks for.
 *
 * @param id the id of the envelope, given by the page, so that sending twice gives them out once
 */
public record NextSerialsForm(
        @NotBlank String id,

        @NotBlank(message = "{scan.next.item}") String item,

        @Min(value = 1, message = "{scan.next.count}") @Max(value = 1000, message = "{scan.next.count}")
        int count) {}
