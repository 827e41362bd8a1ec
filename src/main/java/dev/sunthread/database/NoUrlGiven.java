package dev.sunthread.database;

import org.springframework.context.annotation.Condition;
import org.springframework.context.annotation.ConditionContext;
import org.springframework.core.type.AnnotatedTypeMetadata;
import org.springframework.util.StringUtils;

/** Holds where {@code spring.datasource.url} is absent or blank, as an unset variable in a service file leaves it. */
class NoUrlGiven implements Condition {

    @Override
    public boolean matches(ConditionContext context, AnnotatedTypeMetadata metadata) {
        return !StringUtils.hasText(context.getEnvironment().getProperty("spring.datasource.url"));
    }
}
