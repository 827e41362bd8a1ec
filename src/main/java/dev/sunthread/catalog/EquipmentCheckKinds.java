package dev.sunthread.catalog;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.jdbc.core.simple.JdbcClient;

/** One kind for each way of checking equipment. */
@Configuration(proxyBeanMethods = false)
class EquipmentCheckKinds {

    @Bean
    EquipmentCheckKind calibration(ReleasedCodes codes, JdbcClient jdbc) {
        return new EquipmentCheckKind(EquipmentCheckKind.Way.CALIBRATION, codes, jdbc);
    }

    @Bean
    EquipmentCheckKind verification(ReleasedCodes codes, JdbcClient jdbc) {
        return new EquipmentCheckKind(EquipmentCheckKind.Way.VERIFICATION, codes, jdbc);
    }
}
