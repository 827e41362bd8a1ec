package dev.sunthread.testing;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Somebody who opens pages and sends their forms over HTTP, with cookies, following no redirect. */
public final class Visitor {

    private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\" value=\"([^\"]+)\"");

    private final HttpClient http =
            HttpClient.newBuilder().cookieHandler(new CookieManager()).build();
    private final int port;

    public Visitor(int port) {
        this.port = port;
    }

    /** Opens a page as a browser does. */
    public HttpResponse<String> open(String address) throws IOException, InterruptedException {
        return http.send(request(address).build(), BodyHandlers.ofString());
    }

    /** Sends a form of a page, with the token that stands in it. */
    public HttpResponse<String> send(String page, String form, Map<String, String> fields)
            throws IOException, InterruptedException {
        Matcher token = TOKEN.matcher(open(page).body());
        return sendBare(form, token.find() ? with(fields, token.group(1)) : fields);
    }

    /** Sends a form of a page that was opened before, with the token that stands in it. */
    public HttpResponse<String> sendOpened(
            String page, String form, Map<String, String> fields, Map<String, String> headers)
            throws IOException, InterruptedException {
        Matcher token = TOKEN.matcher(page);
        return sendBare(form, token.find() ? with(fields, token.group(1)) : fields, headers);
    }

    /** Sends fields without a token. */
    public HttpResponse<String> sendBare(String form, Map<String, String> fields)
            throws IOException, InterruptedException {
        return sendBare(form, fields, Map.of());
    }

    /** Sends fields as they are, with further headers. */
    public HttpResponse<String> sendBare(String form, Map<String, String> fields, Map<String, String> headers)
            throws IOException, InterruptedException {
        String body = fields.entrySet().stream()
                .map(field -> field.getKey() + "=" + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
        HttpRequest.Builder request = request(form)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString(body));
        headers.forEach(request::header);
        return http.send(request.build(), BodyHandlers.ofString());
    }

    public HttpResponse<String> signIn(String name, String password) throws IOException, InterruptedException {
        return send("/sign-in?by=password", "/sign-in", Map.of("name", name, "secret", password));
    }

    /** Where an answer leads on to. */
    public static String leadsTo(HttpResponse<String> answer) {
        return answer.headers()
                .firstValue("Location")
                .map(URI::create)
                .map(URI::toString)
                .orElse("nowhere");
    }

    private HttpRequest.Builder request(String address) {
        return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + address))
                .header("Accept", "text/html");
    }

    private static Map<String, String> with(Map<String, String> fields, String token) {
        Map<String, String> all = new java.util.HashMap<>(fields);
        all.put("_csrf", token);
        return all;
    }
}
