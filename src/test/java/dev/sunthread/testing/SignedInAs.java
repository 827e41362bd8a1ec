package dev.sunthread.testing;

import dev.sunthread.access.Role;
import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Inherited;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.springframework.security.test.context.support.WithSecurityContext;

/** Runs a test, or all of a class, as a person with these roles, whom the database does not know; as nobody if none is given. */
@Documented
@Inherited
@Target({ElementType.TYPE, ElementType.METHOD})
@Retention(RetentionPolicy.RUNTIME)
@WithSecurityContext(factory = SignedInPerson.class)
public @interface SignedInAs {

    Role[] value() default {Role.OPERATOR, Role.QUALITY, Role.PROCESS, Role.AUDITOR, Role.ADMINISTRATOR};
}
