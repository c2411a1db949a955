package org.benchleaf.render.view;

import java.util.List;

/// A product sheet in words; absent things are empty texts or lists. Serves paper and web alike.
///
/// @param title of the document
/// @param name botanical name set in lines for paper
/// @param nameLine the same on one line
/// @param common common names, the first by itself
/// @param otherNames the further common names and the family
/// @param yearLines key of the year ring
/// @param columns facts in two columns
/// @param landscape uses, wildlife, native range
/// @param cautions what can hurt whom
/// @param saleNotes what states say
/// @param stock the stock table
/// @param relatives plants it is compared with
/// @param sources numbered
/// @param inherited the note on facts of the species; empty when none is marked
/// @param credit of the photograph; empty when there is none or it is the shop's own
/// @param code side of the code in mm, with its quiet zone; 0 on the web
/// @param link the live address for people
/// @param key the plant's key
public record SheetView(
        String title,
        TextBlock name,
        TextLine nameLine,
        String common,
        String otherNames,
        String why,
        String description,
        List<YearLine> yearLines,
        List<List<FactLine>> columns,
        List<FactLine> landscape,
        List<NoteLine> cautions,
        List<NoteLine> saleNotes,
        List<StockLines> stock,
        List<RelativeLine> relatives,
        List<String> sources,
        String inherited,
        double code,
        String link,
        String key,
        String shop,
        String address,
        String credit) {
    public SheetView {
        yearLines = List.copyOf(yearLines);
        columns = List.copyOf(columns);
        landscape = List.copyOf(landscape);
        cautions = List.copyOf(cautions);
        saleNotes = List.copyOf(saleNotes);
        stock = List.copyOf(stock);
        relatives = List.copyOf(relatives);
        sources = List.copyOf(sources);
    }

    /// One line of the ring's key.
    public record YearLine(String part, String what) {}

    /// One fact with the mark of its source.
    ///
    /// @param mark number of the source, and a sign when the fact is the species'; may be empty
    public record FactLine(String label, String value, String mark) {}

    /// A sentence with the mark of its source.
    public record NoteLine(String text, String mark) {}

    /// The stock table.
    ///
    /// @param asOf when it was looked up, in words
    public record StockLines(String asOf, List<StockRow> rows, boolean prices, boolean seen) {
        public StockLines {
            rows = List.copyOf(rows);
        }
    }

    /// One item.
    ///
    /// @param here whether any can be had today
    public record StockRow(String size, String ready, String seen, String later, String price, boolean here) {}

    /// One relative: how it is related, its name, and its path on the web (empty when it has none).
    public record RelativeLine(String kinship, TextLine name, String path) {}
}
