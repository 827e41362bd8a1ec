package dev.sunthread.testing;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Inherited;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.springframework.test.context.ContextConfiguration;
import org.springframework.test.context.TestExecutionListeners;
import org.springframework.test.context.TestExecutionListeners.MergeMode;

/**
 * Gives the application context of a test a database on the test server. Every test finds it fresh and
 * migrated, however many classes share the context.
 */
@Documented
@Inherited
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@ContextConfiguration(initializers = ContextDatabase.class)
@TestExecutionListeners(listeners = DatabaseRenewal.class, mergeMode = MergeMode.MERGE_WITH_DEFAULTS)
public @interface FreshDatabase {}
