package dev.sunthread.ledger.body;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Describes one field of a body: its meaning for people and the limits that its value keeps. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Field {

    /** What the field says, in words of the trade. */
    String value();

    /** What a text may look like; for text fields only. */
    TextForm text() default TextForm.CODE;

    /** Whether a number must be greater than nought. */
    boolean positive() default false;

    /** The fewest members of a list; a list that may be empty may also be absent. */
    int atLeast() default 0;

    /** The most members of a list. */
    int atMost() default 10_000;
}
