package org.benchleaf.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import org.benchleaf.app.web.Serving;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// Codes that say a trade number, and the pages they lead to.
class TradeNumberTest {
    // example of GS1 General Specifications and GS1 Digital Link, from memory; its check digit is right
    private static final String NUMBER = "09506000134352";

    @Test
    void aCodeWithATradeNumberIsPrintedAndLeadsToThePlant(@TempDir Path parent)
            throws IOException, InterruptedException {
        Path shop = parent.resolve("shop");
        assertThat(Run.benchleaf("new", shop.toString()).code()).isZero();
        Path plants = Files.writeString(parent.resolve("plants.csv"), "name\nItea virginica\n");
        Path stock = Files.writeString(
                parent.resolve("stock.csv"),
                "lot,name,size,count,price,gtin\nL1,Itea virginica,#3,20,18.50," + NUMBER + "\n");
        assertThat(Run.benchleaf("load", plants.toString(), "-w", shop.toString())
                        .code())
                .isZero();
        assertThat(Run.benchleaf("load", stock.toString(), "-w", shop.toString())
                        .code())
                .isZero();
        Path labels = parent.resolve("labels.pdf");
        Run printed = Run.benchleaf(
                "print",
                "labels",
                "Itea virginica",
                "--code",
                "digital-link",
                "-o",
                labels.toString(),
                "-w",
                shop.toString());
        assertThat(printed.code()).as(printed.err() + printed.out()).isZero();
        assertThat(labels).isNotEmptyFile();

        try (Serving serving = Serving.start(shop, Run.NOVEMBER, "127.0.0.1", 0);
                HttpClient http = HttpClient.newHttpClient()) {
            for (String path : new String[] {"/01/" + NUMBER, "/01/" + NUMBER + "/10/L1"}) {
                HttpResponse<String> answer = get(http, serving.port(), path);
                assertThat(answer.statusCode()).as(path).isBetween(300, 399);
                String page = answer.headers().firstValue("Location").orElseThrow();
                assertThat(get(http, serving.port(), page).body()).contains("Itea");
            }
            assertThat(get(http, serving.port(), "/01/09506000134369").statusCode())
                    .as("a number that nothing here has")
                    .isEqualTo(404);
            assertThat(get(http, serving.port(), "/01/no-number").statusCode()).isEqualTo(404);
        }
    }

    private static HttpResponse<String> get(HttpClient http, int port, String path)
            throws IOException, InterruptedException {
        return http.send(
                HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }
}
