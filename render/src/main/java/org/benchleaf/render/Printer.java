package org.benchleaf.render;

import java.io.OutputStream;
import java.util.List;
import org.benchleaf.content.ContentPack;
import org.benchleaf.render.page.BenchCard;
import org.benchleaf.render.page.Label;
import org.benchleaf.render.page.LabelRun;
import org.benchleaf.render.page.PlantSheet;

/// The front door of paper: page models in, one PDF out.
///
/// Same input, same bytes. Fonts are embedded; every character is checked before anything is written. Pages are taken
/// one at a time, so a run of thousands needs no more memory than one. A printer may be shared between threads.
public final class Printer {
    private final ContentPack content;

    private Printer(ContentPack content) {
        this.content = content;
    }

    public static Printer using(ContentPack content) {
        return new Printer(content);
    }

    /// Prints one sheet a plant.
    ///
    /// @param sheets at least one
    /// @param out left open
    /// @return pages written
    /// @throws PrintRefused when a sheet cannot be printed as it stands
    /// @throws org.benchleaf.content.MissingContent when the pack lacks a file or a word
    public int plantSheets(Iterable<PlantSheet> sheets, SheetFormat format, PrintStyle style, OutputStream out) {
        throw new UnsupportedOperationException("coming with the next commit: " + content);
    }

    /// Prints one card a page.
    ///
    /// @param cards at least one
    /// @param out left open
    /// @return pages written
    /// @throws PrintRefused when a card cannot be printed as it stands
    /// @throws org.benchleaf.content.MissingContent when the pack lacks a file or a word
    public int benchCards(Iterable<BenchCard> cards, CardFormat format, PrintStyle style, OutputStream out) {
        throw new UnsupportedOperationException("coming with the next commit: " + content);
    }

    /// Prints labels on sheets of stock paper.
    ///
    /// @param labels at least one
    /// @param out left open
    /// @return sheets written
    /// @throws PrintRefused when a label cannot be printed as it stands
    /// @throws org.benchleaf.content.MissingContent when the pack lacks a file or a word
    public int labels(List<Label> labels, LabelRun run, PrintStyle style, OutputStream out) {
        throw new UnsupportedOperationException("coming with the next commit: " + content);
    }
}
