package org.benchleaf.render.view;

import java.util.List;

/// One page of a document of many plants, in words and measured.
///
/// @param title of the document
/// @param heading on the first page; empty on the others, which carry the title small
/// @param note below the heading, such as the day; may be empty
/// @param sections in the order of print
/// @param legend of the marks; empty where no table stands
/// @param number `page 2 of 5`; empty when there is but one
/// @param shop the shop's name
/// @param address the shop's line
/// @param logo width of its logo in mm, on the first page; 0 for none
public record DocumentView(
        String title,
        String heading,
        String note,
        List<Section> sections,
        List<ConditionMarks.Meaning> legend,
        String number,
        String shop,
        String address,
        double logo) {
    public DocumentView {
        sections = List.copyOf(sections);
        legend = List.copyOf(legend);
    }

    /// The same page with other sections.
    public DocumentView with(List<Section> other) {
        return new DocumentView(title, heading, note, other, legend, number, shop, address, logo);
    }

    /// A part of a page; the template tells them apart by [#kind].
    public sealed interface Section {
        /// Its name in templates.
        default String kind() {
            return getClass().getSimpleName().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /// A line of a table that may go on over pages.
    public sealed interface Line
            permits PlantRow, DocumentView.ComparedRow, DocumentView.ListedRow, DocumentView.ChartRow {
        /// Measured, in mm.
        double height();

        /// Its name in templates.
        default String kind() {
            return getClass().getSimpleName().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /// A heading by itself.
    public record Heading(String text) implements Section {}

    /// A table or the part of it that stands on one page.
    ///
    /// @param heading above it; may be empty
    /// @param heads names of its columns, where they are not always the same
    /// @param rows all of one kind
    public record Rows(String heading, List<TextBlock> heads, List<Line> rows) implements Section {
        public Rows {
            heads = List.copyOf(heads);
            rows = List.copyOf(rows);
        }
    }

    /// A fact of several plants.
    ///
    /// @param values one a plant
    public record ComparedRow(TextBlock label, List<TextBlock> values, double height) implements Line {
        public ComparedRow {
            values = List.copyOf(values);
        }
    }

    /// A line of a plant list.
    public record ListedRow(
            String number,
            TextBlock name,
            TextBlock common,
            TextBlock size,
            String count,
            String each,
            String amount,
            TextBlock note,
            double height)
            implements Line {}

    /// A plant's twelve months on a chart.
    ///
    /// @param strip key of the drawing
    public record ChartRow(TextBlock name, String strip, double height) implements Line {}

    /// Plants side by side with their figures.
    ///
    /// @param width of one in mm
    /// @param stands key of the drawing of their sizes
    /// @param standsWidth its width in mm
    public record Side(double width, List<SideCell> cells, String stands, double standsWidth) implements Section {
        public Side {
            cells = List.copyOf(cells);
        }
    }

    /// One of them.
    ///
    /// @param figure key of its photograph or ring
    public record SideCell(
            TextBlock name,
            TextBlock common,
            TextBlock reason,
            String figure,
            double figureWidth,
            String key,
            String credit) {}

    /// Lines of running text.
    public record Text(List<TextBlock> lines) implements Section {
        public Text {
            lines = List.copyOf(lines);
        }
    }

    /// The cover of a pack.
    ///
    /// @param pictures keys of drawings, in rows
    /// @param pictureWidth in mm
    public record Cover(TextBlock name, List<Pair> facts, List<List<String>> pictures, double pictureWidth, String day)
            implements Section {
        public Cover {
            facts = List.copyOf(facts);
            pictures = List.copyOf(pictures);
        }
    }

    /// A word and what it says.
    public record Pair(String label, String value) {}

    /// The pick of the week.
    ///
    /// @param reason why it is worth buying now
    /// @param year what it does through the year, in lines
    /// @param figure key of its photograph or ring
    /// @param figureWidth in mm
    /// @param items those to be had
    /// @param cautions in sentences, set
    /// @param code side of its code in mm
    /// @param credit of the photograph; may be empty
    public record Lead(
            TextBlock name,
            TextBlock common,
            TextBlock reason,
            List<TextBlock> year,
            String figure,
            double figureWidth,
            List<PlantRow.Item> items,
            List<TextBlock> cautions,
            String codeFigure,
            double code,
            String key,
            String credit)
            implements Section {
        public Lead {
            year = List.copyOf(year);
            items = List.copyOf(items);
            cautions = List.copyOf(cautions);
        }
    }

    /// Plants beside each other.
    ///
    /// @param width of one in mm
    /// @param lying whether the words of each stand beside its figure, not below it
    public record Grid(double width, List<Cell> cells, boolean lying) implements Section {
        public Grid {
            cells = List.copyOf(cells);
        }
    }

    /// One of them.
    ///
    /// @param figure key of its photograph or ring
    /// @param figureWidth in mm
    /// @param offer sizes, counts, prices; set
    /// @param credit of the photograph; may be empty
    public record Cell(
            TextBlock name,
            TextBlock common,
            TextBlock reason,
            TextBlock offer,
            TextBlock caution,
            String figure,
            double figureWidth,
            String key,
            String credit) {}
}
