package dev.sunthread.genealogy;

import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.context.annotation.Configuration;

/** Reads how many answers are made and kept. */
@Configuration
@EnableConfigurationProperties(TraceLimits.class)
class TraceConfiguration {}
