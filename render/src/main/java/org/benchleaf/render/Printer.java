package org.benchleaf.render;

import java.io.OutputStream;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import org.benchleaf.content.ContentPack;
import org.benchleaf.content.StockPaper;
import org.benchleaf.content.Wording;
import org.benchleaf.render.page.AvailabilityList;
import org.benchleaf.render.page.BenchCard;
import org.benchleaf.render.page.Bulletin;
import org.benchleaf.render.page.Comparison;
import org.benchleaf.render.page.Label;
import org.benchleaf.render.page.LabelRun;
import org.benchleaf.render.page.ListPack;
import org.benchleaf.render.page.PlantSheet;
import org.benchleaf.render.pdf.DotFonts;
import org.benchleaf.render.pdf.FontShelf;
import org.benchleaf.render.pdf.InOrder;
import org.benchleaf.render.pdf.PdfPrinter;
import org.benchleaf.render.pdf.PhotoShelf;
import org.benchleaf.render.pdf.PlacedPage;
import org.benchleaf.render.pdf.PlacedPrinter;
import org.benchleaf.render.pdf.PrintPage;
import org.benchleaf.render.view.AvailabilityViews;
import org.benchleaf.render.view.BulletinViews;
import org.benchleaf.render.view.CardPages;
import org.benchleaf.render.view.CardViews;
import org.benchleaf.render.view.ComparisonViews;
import org.benchleaf.render.view.DocumentView;
import org.benchleaf.render.view.Figures;
import org.benchleaf.render.view.LabelViews;
import org.benchleaf.render.view.PackViews;
import org.benchleaf.render.view.PageFrame;
import org.benchleaf.shared.Problem;

/// The front door of paper: page models in, one PDF out.
///
/// Same input, same bytes. Fonts are embedded; every character is checked before its page is written.
/// Pages are taken one at a time, so a run of thousands needs little more memory than one. A page that is refused ends
/// the print, and what was written before it is no whole PDF; a watch may let it pass and print the rest. A printer may
/// be shared between threads.
public final class Printer {
    private final ContentPack content;
    private final SheetTemplates templates;
    private final ShelfPool shelves;
    private final Photographs photographs;
    private final PressSettings press;
    private final PrintWatch watch;
    private final Optional<Consumer<PrintFinding>> checks;

    private Printer(
            ContentPack content,
            Photographs photographs,
            SheetTemplates templates,
            ShelfPool shelves,
            PressSettings press,
            PrintWatch watch,
            Optional<Consumer<PrintFinding>> checks) {
        this.content = content;
        this.photographs = photographs;
        this.templates = templates;
        this.shelves = shelves;
        this.press = press;
        this.watch = watch;
        this.checks = checks;
    }

    /// @param photographs those that its pages may show
    public static Printer using(ContentPack content, Photographs photographs) {
        return new Printer(
                content,
                photographs,
                new SheetTemplates(content),
                new ShelfPool(content),
                PressSettings.PLAIN,
                PrintWatch.STRICT,
                Optional.empty());
    }

    /// The same printer, with pages put on a press or printer in another way.
    public Printer on(PressSettings other) {
        return new Printer(content, photographs, templates, shelves, other, watch, checks);
    }

    /// The same printer; somebody hears how it goes on, and may let refused pages pass.
    public Printer watchedBy(PrintWatch watcher) {
        return new Printer(content, photographs, templates, shelves, press, watcher, checks);
    }

    /// The same printer; each page is looked through before it is written, and somebody hears what should be put right.
    public Printer checkedBy(Consumer<PrintFinding> findings) {
        return new Printer(content, photographs, templates, shelves, press, watch, Optional.of(findings));
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
        return place(
                style,
                "cards.title",
                out,
                (words, shelf, photos) -> new InOrder<>(
                        cards.iterator(),
                        () -> new CardPages(new CardViews(format, words, shelf, photos), shelf, content.palette())
                                ::page,
                        InOrder.usualThreads()),
                (pages, words, shelf) -> pages);
    }

    /// Prints labels on sheets of stock paper.
    ///
    /// @param labels at least one
    /// @param out left open
    /// @return sheets written
    /// @throws PrintRefused when a label cannot be printed as it stands
    /// @throws org.benchleaf.content.MissingContent when the pack lacks a file or a word
    public int labels(List<Label> labels, LabelRun run, PrintStyle style, OutputStream out) {
        return place(
                style,
                "labels.title",
                out,
                (words, shelf, photos) -> new InOrder<>(
                        labels.iterator(), () -> new LabelViews(run, words, shelf)::set, InOrder.usualThreads()),
                (views, words, shelf) -> new LabelPages(views, run, words, shelf, content.palette(), watch));
    }

    /// Draws labels as pictures for roll printers: PNG of black and white dots, each dot one of the printer's.
    ///
    /// @param run on paper that holds one label
    /// @param each is handed each picture
    /// @throws PrintRefused when a label cannot be printed as it stands
    public void labelPictures(List<Label> labels, LabelRun run, PrintStyle style, Consumer<byte[]> each) {
        Wording words = Wording.open(content, style.language(), style.lengths(), style.containers());
        FontShelf shelf = shelves.borrow();
        try {
            LabelViews views = new LabelViews(run, words, shelf);
            DotFonts fonts = new DotFonts(content);
            for (Label label : labels) {
                try {
                    each.accept(new LabelDots(fonts, shelf, run.dpi()).png(views.set(label)));
                } catch (PrintRefused refusal) {
                    watch.refused(refusal);
                }
            }
        } finally {
            shelves.giveBack(shelf);
        }
    }

    /// Prints the cells of a stock paper as outlines.
    ///
    /// @param out left open
    public void proof(StockPaper paper, PrintStyle style, OutputStream out) {
        print(
                style,
                "calibration.title",
                out,
                (words, shelf, photos) ->
                        List.of(PaperProof.of(paper, templates, words)).iterator());
    }

    /// Prints the page that shows what a printer does wrong.
    ///
    /// @param printer its name, for the command that puts it right
    /// @param out left open
    public void calibration(SheetFormat format, String printer, PrintStyle style, OutputStream out) {
        print(
                style,
                "calibration.title",
                out,
                (words, shelf, photos) -> List.of(CalibrationPage.of(format, printer, templates, words))
                        .iterator());
    }

    /// Prints an availability list.
    ///
    /// @param out left open
    /// @return pages written
    /// @throws PrintRefused when a plant cannot be printed as it stands; a watch may let the rest be listed
    /// @throws org.benchleaf.content.MissingContent when the pack lacks a file or a word
    public int availability(AvailabilityList list, SheetFormat format, PrintStyle style, OutputStream out) {
        return print(style, "availability.title", out, (words, shelf, photos) -> {
            Figures figures = new Figures();
            List<DocumentView> pages =
                    AvailabilityViews.pages(list, PageFrame.of(format), words, shelf, photos, figures, watch);
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
            List<DocumentView> pages =
                    new BulletinViews(PageFrame.of(format), words, shelf, photos, figures).pages(bulletin);
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
            List<DocumentView> pages =
                    new ComparisonViews(PageFrame.of(format), words, shelf, photos, figures).pages(comparison);
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
            List<DocumentView> pages = new PackViews(PageFrame.of(format), words, shelf, photos, figures).pages(pack);
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
        if (press.cropMarks()) {
            throw new IllegalArgumentException("only cards, signs and labels stand on larger paper and are cut");
        }
        Wording words = Wording.open(content, style.language(), style.lengths(), style.containers());
        FontShelf shelf = shelves.borrow();
        try {
            PdfPrinter printer = new PdfPrinter(content, shelf, press.calibration(), watch, checks);
            Iterator<PrintPage> made;
            try {
                made = pages.of(words, shelf, new PhotoShelf(photographs));
            } catch (PrintRefused refusal) {
                watch.refused(refusal); // a document of many plants is refused as a whole
                throw new PrintRefused(Problem.of("print.nothing", ""));
            }
            return printer.print(made, words.text(title), words.language().getLanguage(), out);
        } finally {
            shelves.giveBack(shelf);
        }
    }

    /// Prints pages of which every part has its place; what they are made of is measured ahead by threads of its own.
    private <P> int place(PrintStyle style, String title, OutputStream out, Measured<P> measured, Dealt<P> dealt) {
        Wording words = Wording.open(content, style.language(), style.lengths(), style.containers());
        FontShelf shelf = shelves.borrow();
        try (InOrder<?, P> things = measured.of(words, shelf, new PhotoShelf(photographs))) {
            PlacedPrinter printer = new PlacedPrinter(shelf, press, watch, checks);
            Iterator<PlacedPage> pages = dealt.of(things, words, shelf);
            return printer.print(pages, words.text(title), words.language().getLanguage(), out);
        } finally {
            shelves.giveBack(shelf);
        }
    }

    /// What pages are made of.
    private interface Measured<P> {
        InOrder<?, P> of(Wording words, FontShelf shelf, PhotoShelf photos);
    }

    /// Pages made of it.
    private interface Dealt<P> {
        Iterator<PlacedPage> of(Iterator<P> things, Wording words, FontShelf shelf);
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
