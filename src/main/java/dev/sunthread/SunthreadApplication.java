package dev.sunthread;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/** Starts Sunthread: the traceability and genealogy database of one production line. */
@SpringBootApplication
public class SunthreadApplication {

    public static void main(String[] args) {
        SpringApplication.run(SunthreadApplication.class, args);
    }
}
