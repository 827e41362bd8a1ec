package dev.sunthread.scan.label;

import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.context.annotation.Configuration;

/** Reads the sizes of labels. */
@Configuration
@EnableConfigurationProperties(LabelSizes.class)
class LabelConfiguration {}
