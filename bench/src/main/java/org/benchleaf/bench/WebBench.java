package org.benchleaf.bench;

import java.io.IOException;
import java.io.PrintStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.Settings;
import org.benchleaf.app.Workspace;
import org.benchleaf.app.web.Server;
import org.benchleaf.catalog.Catalog;
import org.benchleaf.shared.measure.LengthStyle;

/// Public pages over real HTTP on one machine, the client beside the server: how long until the first byte, how many a
/// second. Every page once (nothing kept), then a few pages again and again, as a bench card's are.
final class WebBench {
    private static final int BATCH = 10_000;
    private static final int COLD = 2_000;
    private static final int HOT_PAGES = 200;
    private static final int HOT = 20_000;
    private static final int CLIENTS = 8;
    private static final List<String> NEEDS = List.of(
            "/find?q=zone+6%2C+shade",
            "/find?q=evergreen+screen", "/find?q=fall+color%2C+under+5+ft", "/", "/available");

    private final HttpClient http = HttpClient.newHttpClient();
    private final String base;

    private WebBench(String base) {
        this.base = base;
    }

    static void run(int plants, PrintStream out) throws IOException {
        Path folder = Files.createTempDirectory("benchleaf-web");
        try {
            run(plants, folder, out);
        } finally {
            NeedBench.delete(folder);
        }
    }

    private static void run(int plants, Path folder, PrintStream out) throws IOException {
        Path shop = folder.resolve("shop");
        Workspace workspace = Workspace.create(
                shop,
                new Settings("Bench", "", URI.create("http://localhost:7070"), Locale.ENGLISH, LengthStyle.IMPERIAL));
        try (Catalog catalog = Catalog.create(workspace.database())) {
            for (int from = 0; from < plants; from += BATCH) {
                catalog.apply(SyntheticCatalog.plan(catalog.view().revision(), from, Math.min(plants, from + BATCH)));
            }
        }
        try (Benchleaf benchleaf = Benchleaf.open(shop, Clock.systemDefaultZone());
                Server server = Server.start(benchleaf, "127.0.0.1", 0)) {
            benchleaf.index();
            List<String> paths = new ArrayList<>();
            benchleaf.catalog().forEachPlant(plant -> paths.add("/p/" + plant.key()));
            new WebBench("http://127.0.0.1:" + server.port()).run(paths, out);
        }
    }

    private void run(List<String> paths, PrintStream out) {
        SplittableRandom random = new SplittableRandom(7);
        NEEDS.forEach(this::get);
        List<String> warming = pick(paths, random, COLD / 4);
        warming.forEach(this::get);
        List<String> each = pick(paths, random, COLD);
        Figures cold = ask(each);
        List<String> few = pick(paths, random, HOT_PAGES);
        few.forEach(this::get);
        ask(few);
        List<String> hot = pick(few, random, HOT);
        Figures kept = ask(hot.subList(0, COLD));
        double coldRate = rate(pick(paths, random, COLD));
        double hotRate = rate(hot);
        Figures entrances = ask(pick(NEEDS, random, COLD / 10));
        out.printf(
                Locale.ROOT,
                "%,d plants: plant page made anew %s; kept %s; %.0f pages/s made anew, %.0f/s kept, by %d clients;"
                        + " front page, list and needs %s%n",
                paths.size(),
                cold,
                kept,
                coldRate,
                hotRate,
                CLIENTS,
                entrances);
    }

    private static List<String> pick(List<String> from, SplittableRandom random, int count) {
        return random.ints(count, 0, from.size()).mapToObj(from::get).toList();
    }

    private Figures ask(List<String> paths) {
        return Figures.of(paths.size(), number -> get(paths.get(number)));
    }

    private double rate(List<String> paths) {
        long start = System.nanoTime();
        List<Thread> clients = new ArrayList<>();
        for (int client = 0; client < CLIENTS; client++) {
            int first = client;
            clients.add(Thread.ofVirtual().start(() -> {
                for (int at = first; at < paths.size(); at += CLIENTS) {
                    get(paths.get(at));
                }
            }));
        }
        for (Thread client : clients) {
            try {
                client.join();
            } catch (InterruptedException stopped) {
                throw new IllegalStateException(stopped);
            }
        }
        return paths.size() / ((System.nanoTime() - start) / 1e9);
    }

    /// Until the head of the answer is there; what follows is read too.
    private void get(String path) {
        try {
            HttpResponse<byte[]> response = http.send(
                    HttpRequest.newBuilder(URI.create(base + path))
                            .header("Accept-Encoding", "gzip")
                            .build(),
                    HttpResponse.BodyHandlers.ofByteArray());
            if (response.statusCode() != 200) {
                throw new IllegalStateException(path + " answered " + response.statusCode());
            }
        } catch (IOException failed) {
            throw new IllegalStateException(failed);
        } catch (InterruptedException stopped) {
            throw new IllegalStateException(stopped);
        }
    }
}
