package dev.sunthread.scan.label;

import dev.sunthread.kernel.Refused;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.properties.ConfigurationProperties;

/** The sizes that labels are printed in, from the configuration. */
@ConfigurationProperties("sunthread.labels")
public record LabelSizes(List<LabelSize> sizes) {

    /** The size of that name; the first if none is asked for. @throws Refused if there is none of that name */
    public LabelSize named(@Nullable String name) {
        return sizes.stream()
                .filter(size -> name == null || size.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new Refused(
                        "There is no label size \"" + name + "\"", "Choose one of those that the label page offers"));
    }
}
