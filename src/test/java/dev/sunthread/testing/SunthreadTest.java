package dev.sunthread.testing;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Inherited;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.context.annotation.Import;
import org.springframework.core.annotation.AliasFor;

/**
 * A test of the whole application on a fresh real database, with {@code MockMvc} at hand; classes share the context. A
 * person with every role is signed in, and forms carry their token; {@link SignedInAs} says otherwise.
 */
@Documented
@Inherited
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@SpringBootTest
@AutoConfigureMockMvc
@FreshDatabase
@SignedInAs
@Import(FormTokens.class)
public @interface SunthreadTest {

    @AliasFor(annotation = SpringBootTest.class)
    WebEnvironment webEnvironment() default WebEnvironment.MOCK;

    @AliasFor(annotation = SpringBootTest.class)
    String[] properties() default {};
}
