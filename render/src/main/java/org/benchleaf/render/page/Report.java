package org.benchleaf.render.page;

import java.util.List;

/// A report about the catalog as one page for a screen: sums on top, then tables. Exactly what is shown, in words.
///
/// @param title what it is about
/// @param note a sentence below the title; may be empty
/// @param sums the figures on top
/// @param sections the tables
public record Report(String title, String note, List<Sum> sums, List<Section> sections) {
    public Report {
        sums = List.copyOf(sums);
        sections = List.copyOf(sections);
    }

    /// How a figure or row is marked, besides its words.
    public enum Mark {
        NEW,
        CHANGED,
        SAME,
        DOUBTFUL,
        REFUSED;

        /// The style's word for it.
        public String css() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /// @param label what is counted
    /// @param value how many
    /// @param mark its kind
    public record Sum(String label, String value, Mark mark) {}

    /// @param heading above the table
    /// @param note below the heading; may be empty
    /// @param columns headings of columns
    /// @param rows as many cells as columns
    public record Section(String heading, String note, List<String> columns, List<Row> rows) {
        public Section {
            columns = List.copyOf(columns);
            rows = List.copyOf(rows);
        }
    }

    /// @param mark its kind
    /// @param cells texts, the first is the row's heading
    public record Row(Mark mark, List<String> cells) {
        public Row {
            cells = List.copyOf(cells);
        }
    }
}
