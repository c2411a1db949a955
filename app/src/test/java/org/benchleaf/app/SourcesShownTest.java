package org.benchleaf.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.benchleaf.app.web.Server;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// Three sources that disagree, on the sheet, on the page and on the screen: each value with whose it is.
class SourcesShownTest {
    @TempDir
    Path folder;

    private String shop = "";

    @BeforeEach
    void loadThreeSources() throws IOException {
        shop = folder.resolve("shop").toString();
        Run.benchleaf("new", shop);
        load(
                "a.csv",
                "name,height,bloom,flower_color,source\nItea virginica,3-5 ft,Jun-Jul,white #FFFFFF,a handbook\n");
        load("b.csv", "name,height,bloom,flower_color,source\nItea virginica,6-8 ft,May,white #F4F2EA,a bulletin\n");
        load("c.csv", "name,height,source\nItea virginica,4-6 ft,our own field\n");
    }

    private void load(String name, String content) throws IOException {
        Path file = Files.writeString(folder.resolve(name), content);
        assertThat(Run.benchleaf("load", file.toString(), "--workspace", shop).code())
                .isZero();
    }

    private String sheet(String... more) throws IOException {
        Path pdf = folder.resolve("sheet.pdf");
        String[] asked = {"print", "sheet", "Itea virginica", "--workspace", shop, "-o", pdf.toString()};
        String[] all = java.util.Arrays.copyOf(asked, asked.length + more.length);
        System.arraycopy(more, 0, all, asked.length, more.length);
        assertThat(Run.benchleaf(all).err()).isEmpty();
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            return new PDFTextStripper().getText(document).replace('\u00a0', ' ');
        }
    }

    @Test
    void standOnTheSheetWhenAskedFor() throws IOException {
        assertThat(sheet("--sources"))
                .contains("also stated: 3–5 ft", "also stated: 6–8 ft", "also stated: Jun–Jul")
                .containsPattern("\\d our own field")
                .containsPattern("\\d a handbook")
                .containsPattern("\\d a bulletin")
                .as("what is said in the same words is not another value")
                .doesNotContain("also stated: white");
        assertThat(sheet()).doesNotContain("also stated").doesNotContain("a handbook");
    }

    @Test
    void openOnThePageAtATouch() throws IOException, InterruptedException {
        try (Benchleaf benchleaf = Benchleaf.open(Path.of(shop), Run.NOVEMBER);
                Server server = Server.start(benchleaf, "127.0.0.1", 0);
                HttpClient http = HttpClient.newHttpClient()) {
            String key = benchleaf.plantFinder().find("Itea virginica").key().text();
            URI address = URI.create("http://127.0.0.1:" + server.port() + "/p/" + key);
            String page = http.send(HttpRequest.newBuilder(address).build(), HttpResponse.BodyHandlers.ofString())
                    .body()
                    .replace('\u00a0', ' ');
            assertThat(page)
                    .contains("<summary>other sources</summary>")
                    .contains("3–5 ft", "6–8 ft", "our own field", "a handbook", "a bulletin");
        }
    }

    @Test
    void standBelowEachFactOnTheScreen() {
        assertThat(Run.benchleaf("plant", "Itea virginica", "--workspace", shop).out())
                .contains("4–6 ft  (our own field)")
                .contains("also stated: 3–5 ft  (a handbook)");
    }
}
