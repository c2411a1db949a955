package org.benchleaf.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.SocketTimeoutException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.benchleaf.content.ContentPack;
import org.benchleaf.content.MissingContent;
import org.benchleaf.render.page.BenchCard;
import org.benchleaf.render.page.PlantTitle;
import org.benchleaf.render.page.Shop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/// Nothing outside the workspace is opened. The canary file is a pipe: whoever opened it to read would wait for ever.
/// The
/// canary socket hears whoever calls.
class CanaryTest {
    private static final Duration PATIENCE = Duration.ofSeconds(60);

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<link rel=\"stylesheet\" type=\"text/css\" href=\"@\"/>",
                "<style type=\"text/css\">@import url(@);</style>",
                "<style type=\"text/css\">@font-face { font-family: x; src: url(@) } h1 { font-family: x }</style>",
                "<style type=\"text/css\">body { background-image: url(@) }</style>",
                "<style type=\"text/css\">h1 { content: url(@); list-style-image: url(@) }</style>",
                "<xi:include xmlns:xi=\"http://www.w3.org/2001/XInclude\" href=\"@\"/>",
                "<meta http-equiv=\"refresh\" content=\"0; url=@\"/>",
                "<base href=\"@\"/>"
            })
    void aHostileHeadOpensNeitherFileNorSocket(String hostile) throws Exception {
        openNothing("</head>", hostile);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<img src=\"@\" alt=\"\"/>",
                "<object data=\"@\"></object>",
                "<iframe src=\"@\"></iframe>",
                "<embed src=\"@\"/>",
                "<a href=\"@\">here</a>",
                "<p style=\"background: url(@)\">words</p>",
                "<input type=\"image\" src=\"@\"/>",
                "<svg xmlns=\"http://www.w3.org/2000/svg\"><image href=\"@\"/></svg>"
            })
    void aHostileBodyOpensNeitherFileNorSocket(String hostile) throws Exception {
        openNothing("</body>", hostile);
    }

    private void openNothing(String before, String hostile) throws Exception {
        try (ServerSocket canary = new ServerSocket(0, 5, InetAddress.getLoopbackAddress())) {
            canary.setSoTimeout(50);
            String socket = "http://127.0.0.1:" + canary.getLocalPort() + "/x.css";
            for (String address :
                    List.of(socket, pipe().toUri().toString(), pipe().toString(), "jar:" + socket + "!/x")) {
                String template = ContentPack.builtIn()
                        .text("templates/plant-sheet.ftlh")
                        .replace(before, hostile.replace("@", address) + before);
                assertTimeoutPreemptively(PATIENCE, () -> printOrStop(template));
                assertThat(called(canary)).as(hostile).isFalse();
            }
        }
    }

    private void printOrStop(String template) throws IOException {
        Path shop = folder.resolve("shop");
        Path file = shop.resolve("templates/plant-sheet.ftlh");
        Files.createDirectories(file.getParent());
        Files.writeString(file, template);
        try {
            Printer.using(ContentPack.withShopFolder(shop), Photographs.NONE)
                    .plantSheets(
                            SampleSheets.sheets().subList(0, 1),
                            SheetFormat.LETTER,
                            PrintStyle.ENGLISH,
                            OutputStream.nullOutputStream());
        } catch (MissingContent | PrintRefused stopped) {
            // a print may stop over it; it must not open it
        }
    }

    @Test
    void hostileWordsOfTheCatalogArePrintedLiterally() throws Exception {
        try (ServerSocket canary = new ServerSocket(0, 5, InetAddress.getLoopbackAddress())) {
            canary.setSoTimeout(50);
            String hostile = "<img src='http://127.0.0.1:" + canary.getLocalPort() + "/x.png'/>";
            BenchCard card = SampleCards.iteaCard();
            BenchCard bad = new BenchCard(
                    PlantTitle.of(Samples.ITEA, "sweet"),
                    Optional.of("<#include 'x'> ${1}"),
                    card.exposure(),
                    card.waterNeed(),
                    card.moisture(),
                    card.hardiness(),
                    card.height(),
                    card.spread(),
                    card.year(),
                    card.cautions(),
                    card.notices(),
                    card.stockSize(),
                    card.form(),
                    card.price(),
                    card.link(),
                    new Shop("Shop", hostile),
                    Optional.empty());
            Printer printer = Printer.using(ContentPack.builtIn(), Photographs.NONE);
            try (Printed printed =
                    Printed.of(out -> printer.benchCards(List.of(bad), CardFormat.LARGE, PrintStyle.ENGLISH, out))) {
                assertThat(printed.text(0)).contains("<img src=", "<#include 'x'> ${1}");
            }
            assertThat(called(canary)).isFalse();
        }
    }

    private Path pipe() throws Exception {
        Path pipe = folder.resolve("canary");
        if (!Files.exists(pipe)) {
            assumeThat(Files.isExecutable(Path.of("/usr/bin/mkfifo"))).isTrue();
            assertThat(new ProcessBuilder("/usr/bin/mkfifo", pipe.toString())
                            .start()
                            .waitFor())
                    .isZero();
        }
        return pipe;
    }

    private static boolean called(ServerSocket canary) throws IOException {
        try {
            canary.accept().close();
            return true;
        } catch (SocketTimeoutException nobody) {
            return false;
        }
    }
}
