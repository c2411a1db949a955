package org.benchleaf.render;

import java.io.OutputStream;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.benchleaf.content.ContentPack;
import org.benchleaf.content.Wording;
import org.benchleaf.render.page.AvailabilityList;
import org.benchleaf.render.page.BenchCard;
import org.benchleaf.render.page.Bulletin;
import org.benchleaf.render.page.Comparison;
import org.benchleaf.render.page.Label;
import org.benchleaf.render.page.LabelRun;
import org.benchleaf.render.page.ListPack;
import org.benchleaf.render.page.PlantSheet;
import org.benchleaf.render.pdf.FontShelf;
import org.benchleaf.render.pdf.PdfPrinter;
import org.benchleaf.render.pdf.PhotoShelf;
import org.benchleaf.render.pdf.PrintPage;
import org.benchleaf.render.view.AvailabilityViews;
import org.benchleaf.render.view.BulletinViews;
import org.benchleaf.render.view.CardViews;
import org.benchleaf.render.view.ComparisonViews;
import org.benchleaf.render.view.DocumentView;
import org.benchleaf.render.view.Figures;
import org.benchleaf.render.view.PackViews;

/// The front door of paper: page models in, one PDF out.
///
/// Same input, same bytes. Fonts are embedded; every character is checked before its page is written.
/// Pages are taken one at a time, so a run of thousands needs little more memory than one; when a page is
/// refused, what was written before it is no whole PDF and is to be thrown away. A printer may be shared
/// between threads.
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
                                        "alt",
                                        set.alternatives(),
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

    /// Prints an availability list.
    ///
    /// @param out left open
    /// @return pages written
    /// @throws PrintRefused when a plant cannot be printed as it stands
    /// @throws org.benchleaf.content.MissingContent when the pack lacks a file or a word
    public int availability(AvailabilityList list, SheetFormat format, PrintStyle style, OutputStream out) {
        return print(style, "availability.title", out, (words, shelf, photos) -> {
            Figures figures = new Figures();
            List<DocumentView> pages = AvailabilityViews.pages(list, format, words, shelf, figures);
            return DocumentPages.of(pages, figures, format, templates, words);
        });
    }

    /// Prints a crop bulletin.
    ///
    /// @param out left open
    /// @return pages written
    /// @throws PrintRefused when a plant cannot be printed as it stands
    /// @throws org.benchleaf.content.MissingContent when the pack lacks a file or a word
    public int bulletin(Bulletin bulletin, SheetFormat format, PrintStyle style, OutputStream out) {
        return print(style, "bulletin.title", out, (words, shelf, photos) -> {
            Figures figures = new Figures();
            List<DocumentView> pages = new BulletinViews(format, words, shelf, photos, figures).pages(bulletin);
            return DocumentPages.of(pages, figures, format, templates, words);
        });
    }

    /// Prints two to four plants side by side.
    ///
    /// @param out left open
    /// @return pages written
    /// @throws PrintRefused when a plant cannot be printed as it stands
    /// @throws org.benchleaf.content.MissingContent when the pack lacks a file or a word
    public int comparison(Comparison comparison, SheetFormat format, PrintStyle style, OutputStream out) {
        return print(style, "comparison.title", out, (words, shelf, photos) -> {
            Figures figures = new Figures();
            List<DocumentView> pages = new ComparisonViews(format, words, shelf, photos, figures).pages(comparison);
            return DocumentPages.of(pages, figures, format, templates, words);
        });
    }

    /// Prints a plant list pack: cover, list, chart of twelve months, and a sheet a plant.
    ///
    /// @param out left open
    /// @return pages written
    /// @throws PrintRefused when a plant cannot be printed as it stands
    /// @throws org.benchleaf.content.MissingContent when the pack lacks a file or a word
    public int listPack(ListPack pack, SheetFormat format, PrintStyle style, OutputStream out) {
        return print(style, "pack.title", out, (words, shelf, photos) -> {
            Figures figures = new Figures();
            List<DocumentView> pages = new PackViews(format, words, shelf, photos, figures).pages(pack);
            SheetPages sheets = new SheetPages(templates, format, words, shelf, photos);
            return joined(
                    DocumentPages.of(pages, figures, format, templates, words),
                    pagesOf(pack.sheets().iterator(), sheets::page));
        });
    }

    private static Iterator<PrintPage> joined(Iterator<PrintPage> first, Iterator<PrintPage> then) {
        return new Iterator<>() {
            @Override
            public boolean hasNext() {
                return first.hasNext() || then.hasNext();
            }

            @Override
            public PrintPage next() {
                return first.hasNext() ? first.next() : then.next();
            }
        };
    }

    private int print(PrintStyle style, String title, OutputStream out, Pages pages) {
        Wording words = Wording.open(content, style.language(), style.lengths(), style.containers());
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
