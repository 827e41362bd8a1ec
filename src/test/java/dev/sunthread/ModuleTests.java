package dev.sunthread;

import org.junit.jupiter.api.Test;
import org.springframework.modulith.core.ApplicationModules;

/** The modules keep to what each may use, and depend on each other in one direction only. */
class ModuleTests {

    @Test
    void modulesUseOnlyWhatTheyMay() {
        ApplicationModules.of(SunthreadApplication.class).verify();
    }
}
