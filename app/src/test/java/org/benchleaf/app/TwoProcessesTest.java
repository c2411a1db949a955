package org.benchleaf.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/// Two processes with workspaces of their own on one PostgreSQL, behind one address: one is killed, nobody notices.
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class TwoProcessesTest {
    private static final Pattern ADDRESS = Pattern.compile("at (http://\\S+?)/ ");

    private final HttpClient http = HttpClient.newHttpClient();
    private final List<Process> processes = new ArrayList<>();
    private final List<URI> servers = new ArrayList<>();
    private EmbeddedPostgres database;

    @BeforeAll
    void start(@TempDir Path folder) throws IOException {
        Assumptions.assumeTrue(
                System.getProperty("os.name").equals("Linux")
                        && System.getProperty("os.arch").equals("amd64"),
                "the tests bring binaries of PostgreSQL for Linux on amd64 only");
        database = EmbeddedPostgres.builder().start();
        String url = database.getJdbcUrl("postgres", "postgres");
        for (String name : List.of("one", "two")) {
            assertThat(Run.benchleaf("new", folder.resolve(name).toString(), "--database", url)
                            .code())
                    .isZero();
        }
        load(folder, "plants.csv", "name,life_form,hardiness,source\nItea virginica,shrub,5-9,from memory\n");
        load(folder, "stock.csv", "lot,name,size,count\nS1,Itea virginica,#3,50\n");
        for (String name : List.of("one", "two")) {
            serve(folder.resolve(name));
        }
    }

    private static void load(Path folder, String name, String content) throws IOException {
        Path file = Files.writeString(folder.resolve(name), content);
        Run run = Run.benchleaf(
                "load", file.toString(), "--workspace", folder.resolve("one").toString());
        assertThat(run.code()).as(run.err()).isZero();
    }

    private void serve(Path workspace) throws IOException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx256m",
                        "-XX:+UseSerialGC",
                        "--enable-native-access=ALL-UNNAMED",
                        "-cp",
                        System.getProperty("java.class.path"),
                        "org.benchleaf.app.Main",
                        "serve",
                        "--workspace",
                        workspace.toString(),
                        "--port",
                        "0")
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        processes.add(process);
        BufferedReader out =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
        Matcher address = ADDRESS.matcher(String.valueOf(out.readLine()));
        assertThat(address.find()).as("it says where it listens").isTrue();
        servers.add(URI.create(address.group(1)));
    }

    @AfterAll
    void stop() throws IOException {
        processes.forEach(Process::destroyForcibly);
        if (database != null) {
            database.close();
        }
    }

    /// As a proxy does it: one after the other in turn, and the next when one does not answer.
    private void forward(HttpExchange exchange, int turn) throws IOException {
        for (int at = 0; at < servers.size(); at++) {
            URI server = servers.get((turn + at) % servers.size());
            try {
                HttpResponse<byte[]> answer = http.send(
                        HttpRequest.newBuilder(server.resolve(exchange.getRequestURI()))
                                .build(),
                        HttpResponse.BodyHandlers.ofByteArray());
                exchange.sendResponseHeaders(answer.statusCode(), answer.body().length);
                exchange.getResponseBody().write(answer.body());
                exchange.close();
                return;
            } catch (IOException gone) {
                // the next one
            } catch (InterruptedException stopped) {
                throw new IOException(stopped);
            }
        }
        exchange.sendResponseHeaders(502, -1);
        exchange.close();
    }

    private String get(URI base, String path) throws IOException, InterruptedException {
        HttpResponse<String> answer =
                http.send(HttpRequest.newBuilder(base.resolve(path)).build(), HttpResponse.BodyHandlers.ofString());
        assertThat(answer.statusCode()).as(path).isEqualTo(200);
        return answer.body();
    }

    @Test
    void oneMayBeKilledWithoutAPublicPageFailingAtTheOther() throws Exception {
        AtomicInteger turn = new AtomicInteger();
        HttpServer proxy = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        proxy.setExecutor(Executors.newVirtualThreadPerTaskExecutor());
        proxy.createContext("/", exchange -> forward(exchange, turn.getAndIncrement()));
        proxy.start();
        try {
            URI address = URI.create("http://127.0.0.1:" + proxy.getAddress().getPort());
            String found = get(address, "/api/v1/names?q=Itea+virginica");
            assertThat(get(address, "/api/v1/names?q=Itea+virginica"))
                    .as("both servers find the same")
                    .isEqualTo(found);
            Matcher key = Pattern.compile("\"key\":\"(\\w+)\"").matcher(found);
            assertThat(key.find()).isTrue();
            for (int asked = 0; asked < 60; asked++) {
                if (asked == 20) {
                    processes.getFirst().destroyForcibly();
                }
                assertThat(get(address, "/p/" + key.group(1))).contains("50 now");
                assertThat(get(address, "/find?q=shrub+zone+6")).contains("Itea");
            }
            assertThat(processes.getFirst().isAlive()).isFalse();
            assertThat(processes.getLast().isAlive()).isTrue();
        } finally {
            proxy.stop(0);
        }
    }
}
