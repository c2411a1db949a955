package org.benchleaf.app.web.walk;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.web.route.Access;
import org.benchleaf.app.web.route.Headers;
import org.benchleaf.app.web.route.Keeping;
import org.benchleaf.app.web.route.Reply;
import org.benchleaf.app.web.route.Request;
import org.benchleaf.app.web.route.Route;
import org.benchleaf.content.ContentPack;
import org.benchleaf.content.Wording;
import org.benchleaf.render.WalkPages;

/// The walk's own page, scripts, style, words and pictures: what a telephone keeps, so that the walk
/// opens where there is no signal. Nothing of it is secret; what the shop knows comes with [WalkData].
///
/// All are read once: a telephone is told of another version by one digest over all of them.
final class WalkFiles {
    private static final String FOLDER = "/walk/file/";
    private static final String SHELL = "/walk";
    private static final String HTML = "text/html; charset=utf-8";
    private static final String SCRIPT = "text/javascript; charset=utf-8";
    private static final String DATA = "application/json";
    private static final List<String> SCRIPTS = List.of(
            "app",
            "dom",
            "find-view",
            "kept-view",
            "look-view",
            "names",
            "nursery",
            "photo",
            "rows-view",
            "scan",
            "send",
            "sounds",
            "store");

    private final Map<String, Reply> files;
    private final Reply shell;
    private final Reply worker;
    private final Reply manifest;

    WalkFiles(Benchleaf benchleaf) {
        ContentPack content = benchleaf.content();
        Wording words = benchleaf.wording();
        Map<String, Part> parts = new LinkedHashMap<>();
        for (String script : SCRIPTS) {
            parts.put(script + ".js", new Part(SCRIPT, content.bytes("scripts/walk/" + script + ".js")));
        }
        parts.put("jsqr.js", new Part(SCRIPT, content.bytes("scripts/vendor/jsqr.js")));
        parts.put("walk.css", new Part("text/css; charset=utf-8", content.bytes("styles/walk.css")));
        parts.put("words.json", new Part(DATA, WalkJson.bytes(words(words))));
        for (String icon : List.of("icon-192.png", "icon-512.png")) {
            parts.put(icon, new Part("image/png", content.bytes("pictures/walk-" + icon)));
        }
        String page = WalkPages.using(content).shell(benchleaf.settings().shopName(), words);
        this.files = parts.entrySet().stream()
                .collect(Collectors.toMap(
                        Map.Entry::getKey, part -> part.getValue().reply()));
        this.shell = new Part(HTML, page.getBytes(StandardCharsets.UTF_8)).reply();
        this.worker = worker(content.text("scripts/walk/worker.js"), parts, page);
        this.manifest = Reply.of(
                "application/manifest+json",
                WalkJson.bytes(manifest(benchleaf.settings().shopName(), words)));
    }

    List<Route> routes() {
        return List.of(
                Route.get(SHELL, Access.EVERYONE, Keeping.ASK_FIRST, Headers.WALK, request -> shell),
                Route.get("/walk/worker.js", Access.EVERYONE, Keeping.ASK_FIRST, Headers.WORKER, request -> worker),
                Route.get(
                        "/walk/walk.webmanifest",
                        Access.EVERYONE,
                        Keeping.ASK_FIRST,
                        Headers.FILE,
                        request -> manifest),
                Route.get("/walk/file/{file}", Access.EVERYONE, Keeping.ASK_FIRST, Headers.FILE, this::file));
    }

    private Reply file(Request request) {
        return Optional.ofNullable(files.get(request.part("file"))).orElseGet(Reply::missing);
    }

    /// The words that scripts ask for, without what they all begin with.
    private static Map<String, String> words(Wording words) {
        Map<String, String> all = new TreeMap<>();
        for (String key : words.keys()) {
            if (key.startsWith("walk.ui.")) {
                all.put(key.substring("walk.ui.".length()), words.text(key));
            }
        }
        return all;
    }

    private static Reply worker(String script, Map<String, Part> parts, String page) {
        MessageDigest digest = sha256();
        digest.update(page.getBytes(StandardCharsets.UTF_8));
        parts.values().forEach(part -> digest.update(part.content()));
        String version = HexFormat.of().formatHex(digest.digest(), 0, 8);
        String files = Stream.concat(Stream.of(SHELL), parts.keySet().stream().map(FOLDER::concat))
                .collect(Collectors.joining(" "));
        String filled = script.replace("{version}", version).replace("{files}", files);
        // it lies below the page that it serves
        return new Part(SCRIPT, filled.getBytes(StandardCharsets.UTF_8)).reply().with("Service-Worker-Allowed", SHELL);
    }

    private static Map<String, Object> manifest(String shop, Wording words) {
        String title = words.text("walk.ui.title");
        return Map.of(
                "id",
                SHELL,
                "name",
                title + " · " + shop,
                "short_name",
                title,
                "start_url",
                SHELL,
                "scope",
                SHELL,
                "display",
                "standalone",
                "background_color",
                "#ffffff",
                "theme_color",
                "#0b4d26",
                "icons",
                List.of(icon("192"), icon("512")));
    }

    private static Map<String, String> icon(String side) {
        return Map.of(
                "src",
                FOLDER + "icon-" + side + ".png",
                "sizes",
                side + "x" + side,
                "type",
                "image/png",
                "purpose",
                "any");
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    @SuppressWarnings("ArrayRecordComponent") // a carrier of bytes, never compared
    private record Part(String type, byte[] content) {
        Reply reply() {
            return Reply.of(type, content);
        }
    }
}
