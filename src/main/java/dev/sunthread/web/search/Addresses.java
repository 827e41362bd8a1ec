package dev.sunthread.web.search;

import dev.sunthread.kernel.UnitId;
import org.springframework.stereotype.Component;
import org.springframework.web.util.UriUtils;

/** The addresses of pages about one thing; labels may hold any characters, so they travel as encoded parameters. */
@Component("addresses")
public final class Addresses {

    public static String unit(UnitId id) {
        return "/unit?" + parameters(id);
    }

    /** The trace of a unit, {@code forward} or {@code backward}. */
    public static String trace(String way, UnitId id) {
        return "/trace?way=" + way + "&" + parameters(id);
    }

    public static String lot(String number) {
        return "/lot?number=" + encoded(number);
    }

    public static String container(String label) {
        return "/container?label=" + encoded(label);
    }

    public static String position(String station, String code) {
        return "/position?station=" + encoded(station) + "&code=" + encoded(code);
    }

    /** The page of a cure run, a test run, equipment, a station or a carrier, in those words, by its number or code. */
    public static String named(String what, String name) {
        if (what.equals("station")) {
            return "/station?code=" + encoded(name);
        }
        return "/" + what.replace(' ', '-') + "?name=" + encoded(name);
    }

    /** The forward trace of a supplier's lot. */
    public static String supplierLot(String text) {
        return "/trace?way=forward&supplierLot=" + encoded(text);
    }

    /** The page of a unit by the three parts of its identity; an absent issuer is this plant. */
    public String unit(String item, String serial, @org.jspecify.annotations.Nullable String issuer) {
        return unit(UnitId.of(issuer, item, serial));
    }

    private static String parameters(UnitId id) {
        String own = "item=" + encoded(id.item()) + "&serial=" + encoded(id.serial());
        return id.issuer().equals(UnitId.THIS_PLANT) ? own : own + "&issuer=" + encoded(id.issuer());
    }

    private static String encoded(String text) {
        return UriUtils.encode(text, java.nio.charset.StandardCharsets.UTF_8);
    }
}
