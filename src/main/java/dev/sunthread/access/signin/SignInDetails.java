package dev.sunthread.access.signin;

import jakarta.servlet.http.HttpServletRequest;
import org.jspecify.annotations.Nullable;
import org.springframework.web.util.WebUtils;

/**
 * What a sign-in form says beside its two fields.
 *
 * @param byBadge whether they are a badge and a PIN
 * @param device the secret that the device keeps, if it was chosen for a station
 */
record SignInDetails(boolean byBadge, @Nullable String device) {

    static SignInDetails of(HttpServletRequest request) {
        var cookie = WebUtils.getCookie(request, StationDevice.COOKIE);
        return new SignInDetails(isByBadge(request), cookie == null ? null : cookie.getValue());
    }

    static boolean isByBadge(HttpServletRequest request) {
        return "badge".equals(request.getParameter("way"));
    }
}
