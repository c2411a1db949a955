package org.benchleaf.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Map;
import org.benchleaf.app.Main;
import org.benchleaf.app.Refusal;
import org.benchleaf.app.Settings;
import org.benchleaf.app.SettingsFile;
import org.benchleaf.app.Workspace;
import org.benchleaf.app.cli.Console;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ServingTest {
    private static final Clock NOVEMBER =
            Clock.fixed(Instant.parse("2026-11-25T15:00:00Z"), ZoneId.of("America/New_York"));

    private static String page(int port) throws InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + "/"))
                .timeout(Duration.ofMinutes(1))
                .build();
        try (HttpClient http = HttpClient.newHttpClient()) {
            return http.send(request, HttpResponse.BodyHandlers.ofString()).body();
        } catch (IOException betweenTwo) {
            return "";
        }
    }

    private static void awaits(int port, String text) throws InterruptedException {
        Instant end = Instant.now().plus(Duration.ofMinutes(2));
        String page = page(port);
        while (!page.contains(text) && Instant.now().isBefore(end)) {
            Thread.sleep(100);
            page = page(port);
        }
        assertThat(page).contains(text);
    }

    @Test
    void settingsThatChangeAreServedAtTheSamePortAndBrokenOnesChangeNothing(@TempDir Path parent)
            throws IOException, InterruptedException {
        Path folder = parent.resolve("shop");
        PrintWriter said = new PrintWriter(new StringWriter());
        assertThat(Main.run(new Console(said, said), NOVEMBER, "new", folder.toString(), "--shop", "Elm Nursery"))
                .isZero();
        try (Serving serving = Serving.start(folder, NOVEMBER, "127.0.0.1", 0)) {
            awaits(serving.port(), "Elm Nursery");
            new SettingsFile(Workspace.at(folder)).change(Map.of("shop.name", "Oak Nursery"));
            awaits(serving.port(), "Oak Nursery");
            Path file = folder.resolve(Settings.FILE);
            Files.writeString(file, Files.readString(file) + "lenghts = long\n");
            Thread.sleep(2500);
            assertThat(page(serving.port())).contains("Oak Nursery");
        }
    }

    @Test
    void aTableOfAdviceThatCannotBeReadIsToldBeforeAnybodyIsServed(@TempDir Path parent) throws IOException {
        Path folder = parent.resolve("shop");
        PrintWriter said = new PrintWriter(new StringWriter());
        assertThat(Main.run(new Console(said, said), NOVEMBER, "new", folder.toString()))
                .isZero();
        Files.writeString(Workspace.at(folder).insteadFile(), "plant,instead\nBuxus,Ilex glabra\n");

        assertThatThrownBy(() -> Serving.start(folder, NOVEMBER, "127.0.0.1", 0))
                .isInstanceOfSatisfying(
                        Refusal.class,
                        refusal -> assertThat(refusal.problem().key()).isEqualTo("advice.heading"));
    }
}
