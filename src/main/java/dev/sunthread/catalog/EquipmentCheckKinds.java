package dev.sunthread.catalog;

import org.springframework.context.ApplicationEventPublisher;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.jdbc.core.simple.JdbcClient;

/** One kind for each way of checking equipment. */
@Configuration(proxyBeanMethods = false)
class EquipmentCheckKinds {

    @Bean
    EquipmentCheckKind calibration(
            ReleasedCodes codes, FoundErrors errors, ApplicationEventPublisher events, JdbcClient jdbc) {
        return new EquipmentCheckKind(EquipmentCheckKind.Way.CALIBRATION, codes, errors, events, jdbc);
    }

    @Bean
    EquipmentCheckKind verification(
            ReleasedCodes codes, FoundErrors errors, ApplicationEventPublisher events, JdbcClient jdbc) {
        return new EquipmentCheckKind(EquipmentCheckKind.Way.VERIFICATION, codes, errors, events, jdbc);
    }
}
