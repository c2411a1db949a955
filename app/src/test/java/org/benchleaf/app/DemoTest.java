package org.benchleaf.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.benchleaf.app.web.Server;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/// The main job once through, as the README has it: catalog loaded, needs answered, paper printed, and the
/// printed code followed to the live page.
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class DemoTest {
    private Path folder = Path.of("");
    private Path shop = Path.of("");
    private Run demo = new Run(-1, "", "");
    private final HttpClient http = HttpClient.newHttpClient();

    @BeforeAll
    void runTheDemo(@TempDir Path temporary) {
        folder = temporary;
        shop = folder.resolve("demo");
        demo = Run.benchleaf("demo", shop.toString());
    }

    @AfterAll
    void closeTheClient() {
        http.close();
    }

    @Test
    void answersThreeNeedsWithReasonsAndPrintsThreeDocuments() throws IOException {
        assertThat(demo.err()).isEmpty();
        assertThat(demo.code()).isZero();
        assertThat(demo.out())
                .contains("✓")
                .contains("✗")
                .contains("./benchleaf serve")
                .contains("/p/");
        assertThat(pdfs())
                .extracting(file -> file.getFileName().toString())
                .containsExactlyInAnyOrder("product-sheet.pdf", "bench-card.pdf", "labels.pdf");
        for (Path pdf : pdfs()) {
            try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
                assertThat(document.getNumberOfPages()).isPositive();
                assertThat(new PDFTextStripper().getText(document)).isNotBlank();
            }
        }
    }

    @Test
    void canBeRunAgain() {
        assertThat(Run.benchleaf("demo", shop.toString()).code()).isZero();
    }

    @Test
    void readsASentenceAndTheSameNeedAsOptionsAlike() {
        Run words = Run.benchleaf(
                "need", "fall color zone 6a shade under 5 ft, 40 in #3", "--json", "--workspace", shop.toString());
        Run options = Run.benchleaf(
                "need",
                "--shows",
                "fall color",
                "--zone",
                "6a",
                "--light",
                "part shade",
                "--max-height",
                "5 ft",
                "--count",
                "40",
                "--size",
                "#3",
                "--json",
                "--workspace",
                shop.toString());
        assertThat(words.code()).isZero();
        // reasons stand in the order asked, which differs; plants and counts must not
        assertThat(matches(words.out())).isEqualTo(matches(options.out())).contains("\"total\"");
        assertThat(words.out()).contains("\"verdict\" : \"met\"");
    }

    private static String matches(String json) {
        return json.lines()
                .filter(line -> line.matches("\\s*\"(?:total|meetAll|missNone|name)\" :.*"))
                .collect(java.util.stream.Collectors.joining("\n"));
    }

    @Test
    void aPrintedCodeLeadsToTheLivePage() throws IOException, InterruptedException {
        List<String> codes = decode(shop.resolve("print/labels.pdf"));
        assertThat(codes).isNotEmpty().allMatch(code -> code.startsWith("HTTP://LOCALHOST:7070/P/"));
        try (Benchleaf benchleaf = Benchleaf.open(shop, Run.NOVEMBER);
                Server server = Server.start(benchleaf, "127.0.0.1", 0)) {
            for (String code : codes) {
                HttpResponse<String> page = get(server, URI.create(code).getPath());
                assertThat(page.statusCode()).as(code).isEqualTo(200);
                assertThat(page.body()).contains("<svg").contains("name=\"viewport\"");
            }
        }
    }

    @Test
    void theLivePageIsCachedUntilSomethingChanges() throws IOException, InterruptedException {
        try (Benchleaf benchleaf = Benchleaf.open(shop, Run.NOVEMBER);
                Server server = Server.start(benchleaf, "127.0.0.1", 0)) {
            String path =
                    "/p/" + benchleaf.plantFinder().find("Clethra alnifolia").key();
            HttpResponse<String> first = get(server, path);
            String tag = first.headers().firstValue("ETag").orElseThrow();
            HttpRequest again = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + path))
                    .header("If-None-Match", tag)
                    .build();
            assertThat(http.send(again, HttpResponse.BodyHandlers.ofString()).statusCode())
                    .isEqualTo(304);
            assertThat(first.headers().map()).doesNotContainKey("set-cookie");
            assertThat(first.body().getBytes(StandardCharsets.UTF_8)).hasSizeLessThan(120_000);
        }
    }

    @Test
    void anAddressThatNobodyPrintedIsAnsweredKindly() throws IOException, InterruptedException {
        try (Benchleaf benchleaf = Benchleaf.open(shop, Run.NOVEMBER);
                Server server = Server.start(benchleaf, "127.0.0.1", 0)) {
            assertThat(get(server, "/p/BCDFGHJ").statusCode()).isEqualTo(404);
            HttpResponse<String> odd = get(server, "/p/%3Cscript%3E");
            assertThat(odd.statusCode()).isEqualTo(404);
            assertThat(odd.body()).doesNotContain("<script>");
        }
    }

    private HttpResponse<String> get(Server server, String path) throws IOException, InterruptedException {
        URI address = URI.create("http://127.0.0.1:" + server.port() + path);
        return http.send(HttpRequest.newBuilder(address).build(), HttpResponse.BodyHandlers.ofString());
    }

    private List<Path> pdfs() throws IOException {
        try (Stream<Path> files = Files.list(shop.resolve("print"))) {
            return files.filter(file -> file.toString().endsWith(".pdf")).toList();
        }
    }

    /// Decodes with zbar from a raster of the finished PDF: a decoder that shares nothing with the encoder.
    private List<String> decode(Path pdf) throws IOException, InterruptedException {
        assumeThat(runs("pdftoppm", "-v") && runs("zbarimg", "--version"))
                .as("pdftoppm and zbarimg are installed")
                .isTrue();
        Path page = folder.resolve("page");
        assertThat(process(
                                "pdftoppm",
                                "-r",
                                "300",
                                "-aa",
                                "no",
                                "-aaVector",
                                "no",
                                "-png",
                                "-singlefile",
                                pdf.toString(),
                                page.toString())
                        .exit())
                .isZero();
        return process("zbarimg", "--raw", "-q", page + ".png").out().lines().toList();
    }

    private boolean runs(String... command) throws InterruptedException {
        try {
            return process(command).exit() == 0;
        } catch (IOException notInstalled) {
            return false;
        }
    }

    private record Ended(int exit, String out) {}

    private static Ended process(String... command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return new Ended(process.waitFor(), out);
    }
}
