package dev.sunthread.web.search;

import dev.sunthread.kernel.UnitId;
import java.util.Map;
import org.springframework.web.util.UriComponentsBuilder;

/** The addresses of pages about one thing; labels may hold any characters, so they travel as encoded parameters. */
public final class Addresses {

    private Addresses() {}

    public static String unit(UnitId id) {
        UriComponentsBuilder address = UriComponentsBuilder.fromPath("/unit")
                .queryParam("item", "{item}")
                .queryParam("serial", "{serial}");
        if (!id.issuer().equals(UnitId.THIS_PLANT)) {
            address.queryParam("issuer", "{issuer}");
        }
        return address.encode()
                .buildAndExpand(Map.of("item", id.item(), "serial", id.serial(), "issuer", id.issuer()))
                .toUriString();
    }

    public static String lot(String number) {
        return UriComponentsBuilder.fromPath("/lot")
                .queryParam("number", "{number}")
                .encode()
                .buildAndExpand(number)
                .toUriString();
    }

    /** The forward trace of a supplier's lot. */
    public static String supplierLot(String text) {
        return UriComponentsBuilder.fromPath("/trace")
                .queryParam("way", "forward")
                .queryParam("supplierLot", "{text}")
                .encode()
                .buildAndExpand(text)
                .toUriString();
    }
}
