package org.benchleaf.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import org.benchleaf.app.web.Server;

/// A shop with a server that tests ask: a workspace of its own in a folder that is thrown away.
public final class Shop implements AutoCloseable {
    private final Path folder;
    private final Benchleaf benchleaf;
    private final Server server;
    private final HttpClient http = HttpClient.newHttpClient();

    private Shop(Path folder) {
        this.folder = folder;
        this.benchleaf = Benchleaf.open(folder, Run.NOVEMBER);
        this.server = Server.start(benchleaf, "127.0.0.1", 0);
    }

    /// The invented grower's shop with its plants and stock: `Wrenfold Growers`.
    public static Shop demo(Path parent) {
        Path folder = parent.resolve("demo");
        run("demo", folder.toString());
        return new Shop(folder);
    }

    /// A shop that has these lists.
    ///
    /// @param lists spreadsheets as text, loaded in this order
    public static Shop with(Path parent, String... lists) {
        Path folder = parent.resolve("shop");
        run("new", folder.toString(), "--shop", "Test nursery");
        for (int at = 0; at < lists.length; at++) {
            load(folder, write(parent.resolve("list-" + at + ".csv"), lists[at]));
        }
        return new Shop(folder);
    }

    private static Path write(Path file, String text) {
        try {
            return Files.writeString(file, text);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private static void load(Path folder, Path list) {
        run("load", list.toString(), "--workspace", folder.toString());
    }

    private static void run(String... arguments) {
        Run run = Run.benchleaf(arguments);
        assertThat(run.code()).as(run.err()).isLessThanOrEqualTo(ErrorReport.FINDINGS);
    }

    public Path folder() {
        return folder;
    }

    public Benchleaf benchleaf() {
        return benchleaf;
    }

    /// The address of a path.
    public String at(String path) {
        return "http://127.0.0.1:" + server.port() + path;
    }

    /// The path of a plant's page.
    public String plant(String name) {
        return "/p/" + benchleaf.plantFinder().find(name).key();
    }

    /// Asks for a path, with headers `name, value, name, value`.
    public HttpResponse<String> get(String path, String... headers) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(at(path)));
        if (headers.length > 0) {
            request.headers(headers);
        }
        try {
            return http.send(request.build(), HttpResponse.BodyHandlers.ofString());
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        } catch (InterruptedException stopped) {
            throw new IllegalStateException(stopped);
        }
    }

    @Override
    public void close() {
        server.close();
        benchleaf.close();
    }
}
