package org.benchleaf.bench;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.IntStream;
import org.benchleaf.content.ContentPack;
import org.benchleaf.content.Wording;
import org.benchleaf.render.CardFormat;
import org.benchleaf.render.Photographs;
import org.benchleaf.render.PrintStyle;
import org.benchleaf.render.Printer;
import org.benchleaf.render.code.CodeImage;
import org.benchleaf.render.page.BenchCard;
import org.benchleaf.render.pdf.CodeDrawing;
import org.benchleaf.render.pdf.Face;
import org.benchleaf.render.pdf.FontShelf;
import org.benchleaf.render.pdf.PhotoShelf;
import org.benchleaf.render.pdf.PlacedPage;
import org.benchleaf.render.view.CardPages;
import org.benchleaf.render.view.CardViews;

/// The same bench cards printed by us and by the browser of this machine, from HTML in which every part has the place
/// that it has on ours; the start of either program counts.
final class BrowserCards {
    private static final ContentPack CONTENT = ContentPack.builtIn();

    private BrowserCards() {}

    static void run(int count, PrintStream out) throws IOException {
        Path folder = Files.createTempDirectory("cards");
        Iterable<BenchCard> cards =
                IntStream.range(0, count).mapToObj(PrintBench::card).toList();
        long start = System.nanoTime();
        Path ours = folder.resolve("ours.pdf");
        try (OutputStream file = Files.newOutputStream(ours)) {
            Printer.using(CONTENT, Photographs.NONE).benchCards(cards, CardFormat.LARGE, PrintStyle.ENGLISH, file);
        }
        report(out, "ours, code not warm", count, start, ours);
        Path html = folder.resolve("cards.html");
        write(cards, html);
        start = System.nanoTime();
        Path theirs = folder.resolve("browser.pdf");
        Process browser = new ProcessBuilder(
                        "chromium",
                        "--headless",
                        "--no-sandbox",
                        "--disable-gpu",
                        "--no-first-run",
                        "--disable-background-networking",
                        "--disable-component-update",
                        "--disable-sync",
                        "--no-pdf-header-footer",
                        "--user-data-dir=" + folder.resolve("profile"),
                        "--print-to-pdf=" + theirs,
                        html.toUri().toString())
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        try {
            browser.waitFor();
        } catch (InterruptedException stopped) {
            browser.destroy();
            Thread.currentThread().interrupt();
        }
        report(out, "browser", count, start, theirs);
    }

    private static void report(PrintStream out, String what, int count, long start, Path file) throws IOException {
        double seconds = (System.nanoTime() - start) / 1e9;
        out.printf(
                "%s: %,d cards in %.1f s, %.0f a second, %,d bytes each: %s%n",
                what, count, seconds, count / seconds, Files.size(file) / count, file);
    }

    private static void write(Iterable<BenchCard> cards, Path html) throws IOException {
        FontShelf shelf = new FontShelf(CONTENT);
        PrintStyle style = PrintStyle.ENGLISH;
        Wording words = Wording.open(CONTENT, style.language(), style.lengths(), style.containers());
        CardPages pages = new CardPages(
                new CardViews(CardFormat.LARGE, words, shelf, new PhotoShelf(Photographs.NONE)),
                shelf,
                CONTENT.palette());
        try (BufferedWriter out = Files.newBufferedWriter(html)) {
            out.write(String.format(
                    Locale.ROOT,
                    "<!DOCTYPE html><html lang='en'><meta charset='utf-8'><title>Cards</title><style>@page{size:%.2fmm %.2fmm;margin:0}"
                            + "body{margin:0}div{position:relative;break-after:page}div>*{position:absolute}"
                            + "span{white-space:pre;line-height:1}",
                    CardFormat.LARGE.widthMm(),
                    CardFormat.LARGE.heightMm()));
            for (Face face : Face.values()) {
                Path font = html.resolveSibling(face.family() + ".ttf");
                Files.write(font, CONTENT.bytes(face.key()));
                out.write("@font-face{font-family:" + face.family() + ";src:url(" + font.getFileName() + ")}");
            }
            out.write("</style>");
            int card = 0;
            for (BenchCard one : cards) {
                write(pages.page(one), card++, out);
            }
        }
    }

    private static void write(PlacedPage page, int number, BufferedWriter out) throws IOException {
        out.write(String.format(Locale.ROOT, "<div style='height:%.2fmm'>", page.heightMm() - 0.05));
        int figure = 0;
        for (PlacedPage.Part part : page.parts()) {
            switch (part) {
                case PlacedPage.Part.Words words -> {
                    for (PlacedPage.Line line : words.lines()) {
                        out.write(String.format(
                                Locale.ROOT,
                                "<p style='margin:0;left:%.2fmm;top:%.2fmm'>",
                                line.left(),
                                line.baseline() - 8));
                        for (PlacedPage.Piece piece : line.pieces()) {
                            out.write(String.format(
                                    Locale.ROOT,
                                    "<span style='font:%.1fpt %s;color:%s'>%s</span>",
                                    piece.size(),
                                    piece.face().family(),
                                    piece.ink(),
                                    piece.text().replace("&", "&amp;").replace("<", "&lt;")));
                        }
                        out.write("</p>");
                    }
                }
                case PlacedPage.Part.Figure drawn -> {
                    out.write(String.format(
                            Locale.ROOT,
                            "<figure style='margin:0;left:%.2fmm;top:%.2fmm;width:%.2fmm'>",
                            drawn.left(),
                            drawn.top(),
                            drawn.width()));
                    out.write(
                            drawn.drawing() instanceof CodeDrawing code
                                    ? code(code.code())
                                    : drawn.drawing().markup("f" + number + "-" + figure++, drawn.alternative()));
                    out.write("</figure>");
                }
                case PlacedPage.Part.Rule rule ->
                    out.write(String.format(
                            Locale.ROOT,
                            "<i style='left:%.2fmm;top:%.2fmm;width:%.2fmm;border-top:%.2fpt solid %s'></i>",
                            rule.left(),
                            rule.top(),
                            rule.width(),
                            rule.thick(),
                            rule.ink()));
            }
        }
        out.write("</div>");
    }

    private static String code(CodeImage code) {
        StringBuilder path = new StringBuilder();
        for (CodeImage.Block block : code.blocks()) {
            path.append('M')
                    .append(block.x())
                    .append(' ')
                    .append(block.y())
                    .append('h')
                    .append(block.width())
                    .append('v')
                    .append(block.height())
                    .append("h-")
                    .append(block.width())
                    .append('z');
        }
        return "<svg viewBox='0 0 " + code.sideInModules() + " " + code.sideInModules() + "'><path d='" + path
                + "'/></svg>";
    }
}
