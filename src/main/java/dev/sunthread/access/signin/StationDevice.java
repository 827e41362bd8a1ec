package dev.sunthread.access.signin;

import dev.sunthread.access.machine.Devices;
import jakarta.servlet.http.HttpServletRequest;
import java.time.Duration;
import java.util.Optional;
import org.springframework.http.ResponseCookie;
import org.springframework.stereotype.Component;
import org.springframework.web.util.WebUtils;

/** Knows by a cookie which station the device of a request was chosen for. */
@Component
public class StationDevice {

    static final String COOKIE = "station-device";
    private static final Duration KEPT = Duration.ofDays(3650);

    private final Devices devices;

    StationDevice(Devices devices) {
        this.devices = devices;
    }

    /** The station of the device that a request comes from. */
    public Optional<String> station(HttpServletRequest request) {
        var cookie = WebUtils.getCookie(request, COOKIE);
        return cookie == null ? Optional.empty() : devices.station(cookie.getValue());
    }

    /** The cookie that makes a device that of a station. */
    public ResponseCookie cookie(String secret, HttpServletRequest request) {
        return ResponseCookie.from(COOKIE, secret)
                .httpOnly(true)
                .secure(request.isSecure())
                .sameSite("Lax")
                .path("/")
                .maxAge(KEPT)
                .build();
    }
}
