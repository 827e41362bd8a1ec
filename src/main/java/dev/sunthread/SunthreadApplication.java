package dev.sunthread;

import dev.sunthread.journal.Command;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/** Starts Sunthread: the traceability and genealogy database of one production line. */
@SpringBootApplication
public class SunthreadApplication {

    /** Serves pages and interfaces, or runs one command of {@link Command} and ends. */
    public static void main(String[] args) {
        SpringApplication application = new SpringApplication(SunthreadApplication.class);
        if (args.length > 0 && Command.WORDS.contains(args[0])) {
            application.setWebApplicationType(WebApplicationType.NONE);
            System.exit(SpringApplication.exit(application.run(args)));
        }
        application.run(args);
    }
}
