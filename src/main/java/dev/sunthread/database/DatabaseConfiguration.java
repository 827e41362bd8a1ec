package dev.sunthread.database;

import java.io.IOException;
import java.nio.file.Path;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Conditional;
import org.springframework.context.annotation.Configuration;

/** Starts the embedded server before the data source, and so before migrations; stops it after both. */
@Configuration(proxyBeanMethods = false)
@Conditional(NoUrlGiven.class)
class DatabaseConfiguration {

    @Bean
    EmbeddedServer embeddedServer(@Value("${sunthread.database.directory}") String directory) throws IOException {
        return EmbeddedServer.start(Path.of(directory));
    }
}
