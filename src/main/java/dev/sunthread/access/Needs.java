package dev.sunthread.access;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Says which right a handler of an address needs, or an envelope of a kind. Without it a handler that only reads needs
 * {@link Right#LOOK_UP}, any other handler is closed to everyone, and a kind needs {@link Right#WORK}.
 */
@Documented
@Target({ElementType.TYPE, ElementType.METHOD})
@Retention(RetentionPolicy.RUNTIME)
public @interface Needs {

    Right value();
}
