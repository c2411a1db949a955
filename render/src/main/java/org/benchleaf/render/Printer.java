package org.benchleaf.render;

import java.io.OutputStream;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.benchleaf.content.ContentPack;
import org.benchleaf.content.Wording;
import org.benchleaf.render.page.BenchCard;
import org.benchleaf.render.page.Label;
import org.benchleaf.render.page.LabelRun;
import org.benchleaf.render.page.PlantSheet;
import org.benchleaf.render.pdf.FontShelf;
import org.benchleaf.render.pdf.PdfPrinter;
import org.benchleaf.render.pdf.PhotoShelf;
import org.benchleaf.render.pdf.PrintPage;
import org.benchleaf.render.view.CardViews;

/// The front door of paper: page models in, one PDF out.
///
/// Same input, same bytes. Fonts are embedded; every character is checked before its page is written. Pages are taken
/// one at a time, so a run of thousands needs little more memory than one; when a page is refused, what was written
/// before it is no whole PDF and is to be thrown away. A printer may be shared between threads.
public final class Printer {
    private final ContentPack content;
    private final SheetTemplates templates;
    private final ShelfPool shelves;
    private final Photographs photographs;

    private Printer(ContentPack content, Photographs photographs) {
        this.content = content;
        this.photographs = photographs;
        this.templates = new SheetTemplates(content);
        this.shelves = new ShelfPool(content);
    }

    /// @param photographs those that its pages may show
    public static Printer using(ContentPack content, Photographs photographs) {
        return new Printer(content, photographs);
    }

    /// Prints one sheet a plant.
    ///
    /// @param sheets at least one
    /// @param out left open
    /// @return pages written
    /// @throws PrintRefused when a sheet cannot be printed as it stands
    /// @throws org.benchleaf.content.MissingContent when the pack lacks a file or a word
    public int plantSheets(Iterable<PlantSheet> sheets, SheetFormat format, PrintStyle style, OutputStream out) {
        return print(style, "sheets.title", out, (words, shelf, photos) -> {
            SheetPages pages = new SheetPages(templates, format, words, shelf, photos);
            return pagesOf(sheets.iterator(), pages::page);
        });
    }

    /// Prints one card a page.
    ///
    /// @param cards at least one
    /// @param out left open
    /// @return pages written
    /// @throws PrintRefused when a card cannot be printed as it stands
    /// @throws org.benchleaf.content.MissingContent when the pack lacks a file or a word
    public int benchCards(Iterable<BenchCard> cards, CardFormat format, PrintStyle style, OutputStream out) {
        return print(style, "cards.title", out, (words, shelf, photos) -> {
            CardViews views = new CardViews(format, words, shelf, photos);
            return pagesOf(cards.iterator(), card -> {
                CardViews.Set set = views.set(card);
                return new PrintPage(
                        card.title().botanical().toString(),
                        List.of(() -> templates.fill(
                                "bench-card",
                                Map.of(
                                        "card",
                                        set.view(),
                                        "language",
                                        words.language().getLanguage()))),
                        set.drawings());
            });
        });
    }

    /// Prints labels on sheets of stock paper.
    ///
    /// @param labels at least one
    /// @param out left open
    /// @return sheets written
    /// @throws PrintRefused when a label cannot be printed as it stands
    /// @throws org.benchleaf.content.MissingContent when the pack lacks a file or a word
    public int labels(List<Label> labels, LabelRun run, PrintStyle style, OutputStream out) {
        return print(
                style,
                "labels.title",
                out,
                (words, shelf, photos) -> new LabelPages(templates, labels, run, words, shelf));
    }

    private int print(PrintStyle style, String title, OutputStream out, Pages pages) {
        Wording words = Wording.open(content, style.language(), style.lengths());
        FontShelf shelf = shelves.borrow();
        try {
            return new PdfPrinter(content, shelf)
                    .print(
                            pages.of(words, shelf, new PhotoShelf(photographs)),
                            words.text(title),
                            words.language().getLanguage(),
                            out);
        } finally {
            shelves.giveBack(shelf);
        }
    }

    /// The pages of one document.
    private interface Pages {
        Iterator<PrintPage> of(Wording words, FontShelf shelf, PhotoShelf photos);
    }

    private static <T> Iterator<PrintPage> pagesOf(Iterator<T> models, Function<T, PrintPage> page) {
        return new Iterator<>() {
            @Override
            public boolean hasNext() {
                return models.hasNext();
            }

            @Override
            public PrintPage next() {
                return page.apply(models.next());
            }
        };
    }
}
