package dev.sunthread.access;

import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.context.annotation.Configuration;

/** Reads how signing in behaves. */
@Configuration(proxyBeanMethods = false)
@EnableConfigurationProperties(AccessProperties.class)
class AccessConfiguration {}
