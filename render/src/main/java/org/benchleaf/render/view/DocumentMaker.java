package org.benchleaf.render.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;
import org.benchleaf.content.Wording;
import org.benchleaf.render.PrintRefused;
import org.benchleaf.render.PrintWatch;
import org.benchleaf.render.page.PlantItems;
import org.benchleaf.render.page.Shop;
import org.benchleaf.render.pdf.Face;
import org.benchleaf.render.pdf.FontShelf;
import org.benchleaf.render.pdf.PhotoShelf;

/// Gathers the parts of a document and deals them to pages.
final class DocumentMaker {
    /// Heading of the first page and its note, in mm.
    static final double TITLE = 16;

    /// The heading where no note stands below it.
    static final double TITLE_ALONE = 12.8;

    /// The small title of the pages that follow.
    static final double AGAIN = 5;

    /// The line of marks at the foot of a page with a table.
    static final double LEGEND = 6;

    /// The most that the shop's logo takes beside the title.
    private static final double LOGO_WIDTH = 55;

    private static final double LOGO_HEIGHT = 12;

    /// A heading above a table.
    private static final double HEADING = 11.5;

    private final Wording words;
    private final FontShelf shelf;
    private final Flow<Part> flow;
    private final PlantRows rows;
    private final PhotoShelf photos;
    private final Figures figures;

    /// What is dealt.
    private sealed interface Part {
        record Whole(DocumentView.Section section) implements Part {}

        record Row(DocumentView.Line line) implements Part {}

        record Group(String heading, List<TextBlock> heads) implements Part {}
    }

    /// @param year of the document, for dates
    /// @param title height of the heading, [#TITLE] or [#TITLE_ALONE]
    /// @param marked whether it has tables with marks, whose meaning stands at the foot
    DocumentMaker(
            Wording words,
            FontShelf shelf,
            PhotoShelf photos,
            PageFrame frame,
            int year,
            boolean marked,
            double title,
            Figures figures) {
        this.photos = photos;
        this.figures = figures;
        this.words = words;
        this.shelf = shelf;
        this.rows = new PlantRows(words, shelf, frame.width(), year, figures);
        double page = frame.height() - (marked ? LEGEND : 0);
        this.flow = new Flow<>(page - AGAIN, page - title);
    }

    /// The pages made with the usual size of something, or with a smaller one where that saves a page: a few rows
    /// alone on the last one are better set closer.
    static List<DocumentView> fewest(double usual, List<Double> smaller, DoubleFunction<List<DocumentView>> made) {
        List<DocumentView> pages = made.apply(usual);
        for (double size : smaller) {
            List<DocumentView> fewer = pages.size() > 1 ? made.apply(size) : pages;
            if (fewer.size() < pages.size()) {
                pages = fewer;
            }
        }
        return pages;
    }

    /// A part that is not parted.
    void add(DocumentView.Section section, double height) {
        flow.add(new Part.Whole(section), height);
    }

    /// What follows stands on the next page.
    void turn() {
        flow.turn();
    }

    /// A table of plants and their items under a heading.
    void plants(String heading, List<PlantItems> plants) {
        plants(heading, plants, PrintWatch.STRICT);
    }

    /// The same without those that cannot be printed, when the watch lets them pass.
    ///
    /// @return those that stand in it
    List<PlantItems> plants(String heading, List<PlantItems> plants, PrintWatch watch) {
        List<PlantItems> sound = new ArrayList<>();
        List<PlantRow> lines = new ArrayList<>();
        for (PlantItems plant : plants) {
            try {
                lines.add(rows.row(plant));
                sound.add(plant);
            } catch (PrintRefused refusal) {
                watch.refused(refusal);
            }
        }
        table(heading, List.of(), PlantRows.HEAD, lines);
        return sound;
    }

    /// A table under a heading; both come again on every page on which it goes on.
    ///
    /// @param heads names of columns, where they are not always the same
    /// @param headHeight of the line of heads in mm
    void table(String heading, List<TextBlock> heads, double headHeight, List<? extends DocumentView.Line> lines) {
        if (lines.isEmpty()) {
            return;
        }
        double height = HEADING + headHeight;
        flow.head(new Part.Group(heading, heads), height, lines.getFirst().height());
        Part again = new Part.Group(words.text("table.continued", Map.of("group", heading)), heads);
        for (DocumentView.Line line : lines) {
            flow.add(new Part.Row(line), line.height(), again, height);
        }
    }

    /// The pages, numbered.
    ///
    /// @param note below the title of the first page, and beside it on the others
    List<DocumentView> pages(String title, String note, Shop shop) {
        Texts texts = new Texts(shelf, shop.name());
        String name = texts.checked(shop.name(), "shop", Face.FACTS_STRONG);
        String address = texts.checked(shop.addressLine(), "shop", Face.FACTS);
        List<List<Part>> dealt = flow.pages();
        List<DocumentView> pages = new ArrayList<>();
        for (List<Part> parts : dealt) {
            String number = dealt.size() == 1
                    ? ""
                    : words.text(
                            "page.of",
                            Map.of(
                                    "page", words.count(pages.size() + 1),
                                    "pages", words.count(dealt.size())));
            pages.add(new DocumentView(
                    title,
                    pages.isEmpty() ? title : "",
                    pages.isEmpty() && parts.stream().anyMatch(DocumentMaker::isCover) ? "" : note,
                    sections(parts),
                    parts.stream().anyMatch(DocumentMaker::hasMarks) ? rows.legend() : List.of(),
                    number,
                    name,
                    address,
                    pages.isEmpty() ? logo(shop) : 0));
        }
        return pages;
    }

    private double logo(Shop shop) {
        return shop.logo()
                .map(logo -> {
                    double width = logo.widthIn(LOGO_WIDTH, LOGO_HEIGHT);
                    figures.put("figure:logo", photos.logo(logo, width / TextBlock.POINT_MM), shop.name());
                    return Math.round(width * 1000) / 1000.0;
                })
                .orElse(0.0);
    }

    /// A cover says itself what the note would.
    private static boolean isCover(Part part) {
        return part instanceof Part.Whole(DocumentView.Section section) && section instanceof DocumentView.Cover;
    }

    private static boolean hasMarks(Part part) {
        return part instanceof Part.Row(DocumentView.Line line) && line instanceof PlantRow;
    }

    private static List<DocumentView.Section> sections(List<Part> parts) {
        List<DocumentView.Section> sections = new ArrayList<>();
        List<DocumentView.Line> open = new ArrayList<>();
        Part.Group group = new Part.Group("", List.of());
        for (Part part : parts) {
            switch (part) {
                case Part.Row(DocumentView.Line line) -> open.add(line);
                case Part.Group next -> {
                    close(sections, group, open);
                    group = next;
                }
                case Part.Whole(DocumentView.Section section) -> {
                    close(sections, group, open);
                    sections.add(section);
                }
            }
        }
        close(sections, group, open);
        return sections;
    }

    private static void close(List<DocumentView.Section> sections, Part.Group group, List<DocumentView.Line> open) {
        if (!open.isEmpty()) {
            sections.add(new DocumentView.Rows(group.heading(), group.heads(), open));
            open.clear();
        }
    }
}
