package org.benchleaf.app.web.staff;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.catalog.accounts.Actor;
import org.benchleaf.catalog.accounts.Role;
import org.benchleaf.catalog.accounts.SignIn;

/// A browser without script, signed in: keeps its cookie, sends its origin and the token of its forms.
public final class StaffClient {
    public static final String PASSWORD = "four dry roots in a row";
    private static final Pattern TOKEN = Pattern.compile("name=\"form-token\" value=\"([^\"]+)\"");

    private final HttpClient http = HttpClient.newHttpClient();
    private final int port;
    private final String cookie;
    private final String token;

    private StaffClient(int port, String cookie, String token) {
        this.port = port;
        this.cookie = cookie;
        this.token = token;
    }

    /// Somebody new, signed in at a server.
    public static StaffClient of(Benchleaf benchleaf, int port, String name, Role role) {
        if (benchleaf.accounts().find(name).isEmpty()) {
            benchleaf.accounts().add(name, role, PASSWORD.toCharArray(), new Actor("test", Actor.COMMAND_LINE));
        }
        SignIn.Done in = (SignIn.Done) benchleaf.accounts().signIn(name, PASSWORD.toCharArray(), "192.0.2.55", "test");
        return new StaffClient(
                port, "benchleaf=" + in.token(), benchleaf.accounts().formToken(in.token()));
    }

    public String cookie() {
        return cookie;
    }

    public String formToken() {
        return token;
    }

    public HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return send(to(path));
    }

    /// A page that must be there.
    public String page(String path) throws IOException, InterruptedException {
        HttpResponse<String> page = get(path);
        if (page.statusCode() != 200) {
            throw new AssertionError(path + " answered " + page.statusCode() + ": " + page.body());
        }
        return page.body();
    }

    /// A file that must be there.
    public byte[] bytes(String path) throws IOException, InterruptedException {
        HttpResponse<byte[]> file = http.send(to(path).build(), HttpResponse.BodyHandlers.ofByteArray());
        if (file.statusCode() != 200) {
            throw new AssertionError(path + " answered " + file.statusCode());
        }
        return file.body();
    }

    /// Sends a form.
    ///
    /// @param fields names and values in turn
    public HttpResponse<String> post(String path, String... fields) throws IOException, InterruptedException {
        return send(form(path, token, "http://127.0.0.1:" + port, fields));
    }

    public HttpResponse<String> forged(String path, String formToken, String origin, String... fields)
            throws IOException, InterruptedException {
        return send(form(path, formToken, origin, fields));
    }

    private HttpRequest.Builder form(String path, String formToken, String origin, String... fields) {
        List<String> parts = new ArrayList<>(List.of("form-token=" + encoded(formToken)));
        for (int at = 0; at < fields.length; at += 2) {
            parts.add(encoded(fields[at]) + "=" + encoded(fields[at + 1]));
        }
        HttpRequest.Builder request = to(path).header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(String.join("&", parts)));
        return origin.isEmpty() ? request : request.header("Origin", origin);
    }

    /// Sends a form with a file.
    public HttpResponse<String> upload(String path, String field, String file, byte[] content, String... fields)
            throws IOException, InterruptedException {
        String boundary = "----benchleaf-test";
        StringBuilder head = new StringBuilder();
        List<String> all = new ArrayList<>(List.of(fields));
        all.addAll(List.of("form-token", token));
        for (int at = 0; at < all.size(); at += 2) {
            head.append("--%s\r\nContent-Disposition: form-data; name=\"%s\"\r\n\r\n%s\r\n"
                    .formatted(boundary, all.get(at), all.get(at + 1)));
        }
        head.append("--%s\r\nContent-Disposition: form-data; name=\"%s\"; filename=\"%s\"\r\n"
                        .formatted(boundary, field, file))
                .append("Content-Type: application/octet-stream\r\n\r\n");
        byte[] start = head.toString().getBytes(StandardCharsets.UTF_8);
        byte[] end = ("\r\n--" + boundary + "--\r\n").getBytes(StandardCharsets.UTF_8);
        byte[] body = new byte[start.length + content.length + end.length];
        System.arraycopy(start, 0, body, 0, start.length);
        System.arraycopy(content, 0, body, start.length, content.length);
        System.arraycopy(end, 0, body, start.length + content.length, end.length);
        return send(to(path).header("Content-Type", "multipart/form-data; boundary=" + boundary)
                .header("Origin", "http://127.0.0.1:" + port)
                .POST(HttpRequest.BodyPublishers.ofByteArray(body)));
    }

    /// Where a change led, after it was made.
    public static String led(HttpResponse<String> answer) {
        if (answer.statusCode() != 303) {
            throw new AssertionError("answered " + answer.statusCode() + ": " + answer.body());
        }
        return answer.headers().firstValue("Location").orElseThrow();
    }

    private HttpRequest.Builder to(String path) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path));
        return cookie.isEmpty() ? request : request.header("Cookie", cookie);
    }

    private HttpResponse<String> send(HttpRequest.Builder request) throws IOException, InterruptedException {
        return http.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    /// The token of the first form on a page.
    static String tokenOf(String page) {
        Matcher token = TOKEN.matcher(page);
        return token.find() ? token.group(1) : "";
    }

    static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    /// Nobody yet.
    public static StaffClient stranger(int port) {
        return new StaffClient(port, "", "");
    }
}
