package dev.sunthread.web;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.web.util.UriUtils;

/** The address of the page that is shown, to be shown on paper and to lead to other parts of the same list. */
public record PageAddress(String path, Map<String, String> parameters) {

    static PageAddress of(String path, @Nullable String query) {
        Map<String, String> parameters = new LinkedHashMap<>();
        for (String part : query == null || query.isEmpty() ? new String[0] : query.split("&")) {
            String[] pair = part.split("=", 2);
            if (pair.length == 2 && !pair[1].isEmpty()) {
                parameters.putIfAbsent(decoded(pair[0]), decoded(pair[1]));
            }
        }
        return new PageAddress(path, parameters);
    }

    private static String decoded(String text) {
        try {
            return URLDecoder.decode(text, StandardCharsets.UTF_8);
        } catch (IllegalArgumentException notEncoded) {
            return text;
        }
    }

    /** The same with one parameter said otherwise, or left out if it is absent. */
    public PageAddress with(String name, @Nullable Object value) {
        Map<String, String> others = new LinkedHashMap<>(parameters);
        others.remove(name);
        if (value != null) {
            others.put(name, value.toString());
        }
        return new PageAddress(path, others);
    }

    /** The address that gives a table of the page as a file. */
    public PageAddress file(String table, String format) {
        return with("table", table).with("format", format);
    }

    @Override
    public String toString() {
        String query = parameters.entrySet().stream()
                .map(parameter -> encoded(parameter.getKey()) + "=" + encoded(parameter.getValue()))
                .collect(Collectors.joining("&"));
        return query.isEmpty() ? path : path + "?" + query;
    }

    private static String encoded(String text) {
        return UriUtils.encode(text, StandardCharsets.UTF_8);
    }
}
