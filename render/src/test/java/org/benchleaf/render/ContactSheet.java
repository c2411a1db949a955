package org.benchleaf.render;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.benchleaf.content.ContentPack;
import org.benchleaf.render.page.LabelRun;

/// Prints hard cases of every kind of page into a folder, to be looked at.
final class ContactSheet {
    private ContactSheet() {}

    public static void main(String[] args) throws IOException {
        Path folder = Files.createDirectories(Path.of(args[0]));
        Printer printer = Printer.using(ContentPack.builtIn(), new SamplePhotos());
        try (OutputStream out = Files.newOutputStream(folder.resolve("cards-large.pdf"))) {
            printer.benchCards(PhotoSamples.withPhotos(SampleCards.cards()), CardFormat.LARGE, PrintStyle.ENGLISH, out);
        }
        try (OutputStream out = Files.newOutputStream(folder.resolve("cards-small.pdf"))) {
            printer.benchCards(PhotoSamples.withPhotos(SampleCards.cards()), CardFormat.SMALL, PrintStyle.ENGLISH, out);
        }
        LabelRun run = new LabelRun(
                ContentPack.builtIn().paper("letter-30"), Set.of(1, 2, 3), LabelRun.FillOrder.BY_ROW, 0, 0);
        try (OutputStream out = Files.newOutputStream(folder.resolve("labels.pdf"))) {
            printer.labels(SampleCards.labels(27), run, PrintStyle.ENGLISH, out);
        }
        if (args.length > 1) {
            return;
        }
        for (SheetFormat format : SheetFormat.values()) {
            try (OutputStream out = Files.newOutputStream(folder.resolve("sheets-" + format + ".pdf"))) {
                printer.plantSheets(
                        PhotoSamples.sheetsWithPhotos(SampleSheets.sheets()), format, PrintStyle.ENGLISH, out);
            }
        }
        WebPages web = WebPages.using(ContentPack.builtIn(), new SamplePhotos());
        int n = 0;
        for (var sheet : PhotoSamples.sheetsWithPhotos(SampleSheets.sheets())) {
            Files.writeString(folder.resolve("page-" + n++ + ".html"), web.plantPage(sheet, PrintStyle.ENGLISH));
        }
    }
}
