package org.benchleaf.render.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.content.Wording;
import org.benchleaf.render.code.CodeImage;
import org.benchleaf.render.figure.Icons;
import org.benchleaf.render.figure.YearRing;
import org.benchleaf.render.figure.YearWords;
import org.benchleaf.render.page.Bulletin;
import org.benchleaf.render.page.Bulletin.Pick;
import org.benchleaf.render.page.ItemLine;
import org.benchleaf.render.page.PlantItems;
import org.benchleaf.render.pdf.CodeDrawing;
import org.benchleaf.render.pdf.Face;
import org.benchleaf.render.pdf.FontShelf;
import org.benchleaf.render.pdf.PhotoShelf;
import org.benchleaf.shared.stock.Availability;

/// Sets a crop bulletin.
public final class BulletinViews {
    private static final double PHOTO_WIDTH = 88;
    private static final double PHOTO_HEIGHT = 76;
    private static final double RING = 70;
    private static final double CODE = 23;
    private static final double CODE_COLUMN = 24;
    private static final double BETWEEN = 7;
    /// What the style sheet puts between the texts of the lead, and of another, the key of the plant among them.
    private static final double LEAD_MARGINS = 11;

    private static final double CELL_MARGINS = 12;
    private static final int ACROSS = 3;
    private static final double GUTTER = 6;
    private static final double CELL_FIGURE = 41;
    /// The figure of a pick whose words stand beside it, and what lies between.
    private static final double LYING_FIGURE = 34;

    private static final double LYING_BETWEEN = 5;
    /// Where they bring another row of the others onto the first page, or save the last one.
    private static final List<Double> SMALLER_FIGURES = List.of(36.0, 31.0);
    /// What figures of the first page grow to where the next row does not fit on it.
    private static final double LARGEST_FIGURE = 54;
    /// The most that the figure of the lead grows where the next row does not fit on its page: beside it stock and code
    /// need their room.
    private static final double MOST_GROWTH = 10;
    private static final int LINES_OF_NAME = 3;
    /// Less than this is no hole.
    private static final double EASE = 6;

    private final Wording words;
    private final FontShelf shelf;
    private final PhotoShelf photos;
    private final PageFrame frame;
    private final Figures figures;

    /// @param frame of its pages
    /// @param figures receives the drawings
    public BulletinViews(PageFrame frame, Wording words, FontShelf shelf, PhotoShelf photos, Figures figures) {
        this.words = words;
        this.shelf = shelf;
        this.photos = photos;
        this.frame = frame;
        this.figures = figures;
    }

    /// @throws org.benchleaf.render.PrintRefused when a text does not fit or cannot be printed
    public List<DocumentView> pages(Bulletin bulletin) {
        return DocumentMaker.fewest(CELL_FIGURE, SMALLER_FIGURES, later -> pages(bulletin, later));
    }

    /// @param later the figures on the pages after the first
    private List<DocumentView> pages(Bulletin bulletin, double later) {
        int year = bulletin.from().getYear();
        DocumentMaker maker = new DocumentMaker(words, shelf, photos, frame, year, true, DocumentMaker.TITLE, figures);
        PlantRows rows = new PlantRows(words, shelf, frame.width(), year, figures);
        figures.put("figure:caution", Icons.caution(words.text("sheet.cautions")));
        picks(bulletin, rows, year, later).forEach(block -> maker.add(block.section(), block.height()));
        maker.plants(words.text("bulletin.items"), bulletin.items());
        String range = words.text(
                "bulletin.range", Map.of("from", words.date(bulletin.from()), "to", words.date(bulletin.to())));
        boolean empty = bulletin.lead().isEmpty() && bulletin.others().isEmpty();
        return maker.pages(
                words.text("bulletin.title"),
                empty ? range + ". " + words.text("bulletin.empty") : range,
                bulletin.shop());
    }

    /// A section and its height in mm.
    private record Block(DocumentView.Section section, double height) {}

    /// The lead, and the others below it in rows. What would be left free on the first page goes to another row of
    /// them, with smaller figures, or else to the figure of the lead.
    private List<Block> picks(Bulletin bulletin, PlantRows rows, int year, double later) {
        List<Block> lead =
                bulletin.lead().map(pick -> lead(pick, rows, 0)).stream().toList();
        double room = frame.height() - DocumentMaker.LEGEND - DocumentMaker.TITLE - height(lead);
        double figure = CELL_FIGURE;
        int fitting = fitting(grid(bulletin.others(), year, figure), room);
        for (double smaller : SMALLER_FIGURES) {
            int more = fitting(grid(bulletin.others(), year, smaller), room);
            if (more > fitting) {
                fitting = more;
                figure = smaller;
            }
        }
        List<Block> others = grid(bulletin.others(), year, figure);
        double left = room - height(others.subList(0, fitting));
        double growth = fitting < others.size() ? Math.clamp(left - EASE, 0, MOST_GROWTH) : 0;
        // beside a larger figure words have less room: all must still fit, the name on three lines
        double usual = height(lead);
        int lines = linesOfName(lead);
        for (double grown : new double[] {growth, growth / 2, 0}) {
            lead = bulletin.lead().map(pick -> lead(pick, rows, grown)).stream().toList();
            if (height(lead) <= usual + left && linesOfName(lead) <= Math.max(lines, LINES_OF_NAME)) {
                break;
            }
        }
        if (fitting < others.size()) {
            int full = Math.max(0, fitting - 1); // but for the heading
            double each = full == 0 ? 0 : (left - (height(lead) - usual) - EASE) / full;
            double first = Math.clamp(figure + each, figure, LARGEST_FIGURE);
            others = grid(bulletin.others(), year, Math.min(figure, later), full, first);
        }
        return Stream.concat(lead.stream(), others.stream()).toList();
    }

    private static int linesOfName(List<Block> lead) {
        return lead.stream()
                .mapToInt(block -> block.section() instanceof DocumentView.Lead set
                        ? set.name().lines().size()
                        : 0)
                .sum();
    }

    private static double height(List<Block> blocks) {
        return blocks.stream().mapToDouble(Block::height).sum();
    }

    private static int fitting(List<Block> blocks, double room) {
        int count = 0;
        while (count < blocks.size() && height(blocks.subList(0, count + 1)) <= room) {
            count++;
        }
        // the heading of the others does not stay behind alone
        return count == 1 ? 0 : count;
    }

    /// @param growth of its figure beyond the usual in mm
    private Block lead(Pick pick, PlantRows rows, double growth) {
        String subject = pick.title().botanical().toString();
        Texts texts = new Texts(shelf, subject);
        double figureWidth = pick.photo().isPresent() ? PHOTO_WIDTH : RING + growth;
        double figureHeight = (pick.photo().isPresent() ? PHOTO_HEIGHT : RING) + growth;
        double right = frame.width() - figureWidth - BETWEEN;
        String figure = figure(pick, "lead", figureWidth, figureHeight);
        TextBlock name = texts.name(pick.title().botanical(), right, new TypeRange(27, 22, 17, 4, 1.07));
        TextBlock common = texts.flow(common(pick), "common name", Face.FACTS, right, 12.5, 1.2);
        TextBlock reason = texts.flow(pick.reason(), "selling note", Face.NAMES_ITALIC, right, 13.5, 1.25);
        List<TextBlock> year = YearWords.lines(pick.year(), words).stream()
                .map(line -> texts.flow(
                        words.text("ring.alternative", Map.of("part", line.part(), "what", line.what())),
                        "year",
                        Face.FACTS,
                        right,
                        9,
                        1.25))
                .toList();
        List<TextBlock> cautions = cautions(pick, texts, right - 6, 8.4);
        CodeImage code = CodeImage.of(pick.link());
        CodeDrawing drawn = new CodeDrawing(
                code, code.dotsThatFit(CODE).orElseThrow(() -> LabelViews.codeTooSmall(code, CODE, subject)));
        figures.put(
                "lead:code",
                drawn,
                words.text("code.alternative", Map.of("link", pick.link().toString())));
        PlantRow row = rows.row(new PlantItems(pick.title(), pick.year(), pick.items(), pick.link()));
        TextBlock call = texts.flow(words.text("sheet.call"), "call", Face.FACTS_STRONG, CODE_COLUMN, 7.6, 1.19);
        double offer = Math.max(
                row.items().stream()
                                .mapToDouble(item -> Math.max(
                                                item.size().height(),
                                                item.later().height())
                                        + 2.4)
                                .sum()
                        + 6,
                call.height() + drawn.width() * TextBlock.POINT_MM + 4);
        double height = name.height()
                + common.height()
                + reason.height()
                + Texts.height(year)
                + Texts.height(cautions)
                + offer
                + LEAD_MARGINS;
        String credit = credit(pick, texts);
        return new Block(
                new DocumentView.Lead(
                        name,
                        common,
                        reason,
                        year,
                        figure,
                        figureWidth,
                        row.items(),
                        cautions,
                        "lead:code",
                        round(drawn.width() * TextBlock.POINT_MM),
                        pick.link().plant().toString(),
                        credit),
                Math.max(height, figureHeight + credit(pick, figureWidth)) + 12);
    }

    /// Rows of three; one or two that are left over lie beside each other and fill the last.
    private List<Block> grid(List<Pick> picks, int year, double figure) {
        return grid(picks, year, figure, 0, figure);
    }

    /// @param rows at the top, whose figures are larger
    private List<Block> grid(List<Pick> picks, int year, double figure, int rows, double larger) {
        List<Block> blocks = new ArrayList<>();
        if (!picks.isEmpty()) {
            blocks.add(new Block(new DocumentView.Heading(words.text("bulletin.others")), 11));
        }
        for (int from = 0; from < picks.size(); from += ACROSS) {
            List<Pick> row = picks.subList(from, Math.min(picks.size(), from + ACROSS));
            double own = from < rows * ACROSS ? larger : figure;
            blocks.add(row.size() == ACROSS ? standing(row, from, year, own) : lying(row, from, year));
        }
        return blocks;
    }

    private Block standing(List<Pick> picks, int from, int year, double figure) {
        double width = (frame.width() - GUTTER * (ACROSS - 1)) / ACROSS;
        List<DocumentView.Cell> cells = new ArrayList<>();
        double height = 0;
        for (Pick pick : picks) {
            double figureWidth = pick.photo().isPresent() ? width : figure;
            DocumentView.Cell cell = cell(pick, "pick" + (from + cells.size()), width, figureWidth, figure, year);
            cells.add(cell);
            height = Math.max(height, figure + credit(pick, width) + height(cell) + CELL_MARGINS);
        }
        return new Block(new DocumentView.Grid(round(width), cells, false), height);
    }

    private Block lying(List<Pick> picks, int from, int year) {
        double width = (frame.width() - GUTTER * (picks.size() - 1)) / picks.size();
        List<DocumentView.Cell> cells = new ArrayList<>();
        double height = 0;
        for (Pick pick : picks) {
            double words = width - LYING_FIGURE - LYING_BETWEEN;
            DocumentView.Cell cell =
                    cell(pick, "pick" + (from + cells.size()), words, LYING_FIGURE, LYING_FIGURE, year);
            cells.add(cell);
            height = Math.max(height, Math.max(LYING_FIGURE + credit(pick, LYING_FIGURE), height(cell) + 7) + 4);
        }
        return new Block(new DocumentView.Grid(round(width), cells, true), height);
    }

    /// Of its words without what lies between them.
    private static double height(DocumentView.Cell cell) {
        return cell.name().height()
                + cell.common().height()
                + cell.reason().height()
                + cell.offer().height()
                + cell.caution().height();
    }

    /// @param width of its words
    private DocumentView.Cell cell(
            Pick pick, String place, double width, double figureWidth, double figureHeight, int year) {
        Texts texts = new Texts(shelf, pick.title().botanical().toString());
        String figure = figure(pick, place, figureWidth, figureHeight);
        return new DocumentView.Cell(
                texts.name(pick.title().botanical(), width, new TypeRange(14, 12, 10, 4, 1.1)),
                texts.flow(common(pick), "common name", Face.FACTS, width, 9.5, 1.2),
                texts.flow(pick.reason(), "selling note", Face.NAMES_ITALIC, width, 10.5, 1.22),
                texts.flow(offer(pick, year), "stock", Face.FACTS, width, 8.8, 1.25),
                texts.flow(
                        pick.cautions().stream()
                                .map(caution -> words.caution(caution.caution()))
                                .collect(Collectors.joining("; ")),
                        "caution",
                        Face.FACTS,
                        width - 5,
                        8,
                        1.22),
                figure,
                round(figureWidth),
                pick.link().plant().toString(),
                credit(pick, texts));
    }

    private String offer(Pick pick, int year) {
        return pick.items().stream()
                .filter(item -> !(item.availability() instanceof Availability.SoldOut
                        || item.availability() instanceof Availability.Withdrawn))
                .map(item -> offer(item, year))
                .collect(Collectors.joining("; "));
    }

    private String offer(ItemLine item, int year) {
        String count = item.availability() instanceof Availability.From(var week, int later)
                ? words.text(
                        "table.from", Map.of("count", words.count(later), "day", words.shortDate(week.monday(), year)))
                : words.availability(item.availability());
        return Stream.of(
                        words.size(item.size(), item.form()),
                        Typesetter.joined(count),
                        item.price().map(words::money).orElse(""))
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining(words.text("list.comma")));
    }

    private List<TextBlock> cautions(Pick pick, Texts texts, double width, double size) {
        return pick.cautions().stream()
                .map(caution -> texts.flow(words.caution(caution.caution()), "caution", Face.FACTS, width, size, 1.24))
                .toList();
    }

    private String figure(Pick pick, String place, double widthMm, double heightMm) {
        String subject = pick.title().botanical().toString();
        String key = "figure:" + place;
        if (pick.photo().isPresent()) {
            figures.put(
                    key,
                    photos.fill(
                            pick.photo().get().file(),
                            subject,
                            widthMm / TextBlock.POINT_MM,
                            heightMm / TextBlock.POINT_MM),
                    words.text("photo.alt", Map.of("name", subject)));
        } else {
            figures.put(key, YearRing.draw(pick.year(), subject, words));
        }
        return key;
    }

    private String credit(Pick pick, Texts texts) {
        return pick.photo()
                .map(photo -> texts.checked(words.credit(photo.credit(), photo.license()), "photo credit", Face.FACTS))
                .orElse("");
    }

    /// Height of the credit under a figure, with what lies between them.
    private double credit(Pick pick, double width) {
        Texts texts = new Texts(shelf, pick.title().botanical().toString());
        String credit = credit(pick, texts);
        return credit.isEmpty()
                ? 0
                : 0.6
                        + texts.flow(credit, "photo credit", Face.FACTS, width, 6.2, 7.6 / 6.2)
                                .height();
    }

    private static String common(Pick pick) {
        return pick.title().commonNames().stream().findFirst().orElse("");
    }

    private static double round(double mm) {
        return Math.round(mm * 1000) / 1000.0;
    }
}
