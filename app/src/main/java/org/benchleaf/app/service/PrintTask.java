package org.benchleaf.app.service;

import java.util.List;
import org.benchleaf.render.CardFormat;
import org.benchleaf.render.PressSettings;
import org.benchleaf.render.PrintStyle;
import org.benchleaf.render.SheetFormat;
import org.benchleaf.render.page.LabelRun;

/// Something to be printed: what, of which plants, in which words and inks, on which printer.
///
/// @param wanted plants, sizes and numbers, in the order of asking
/// @param order in which they are printed
/// @param palette name of the inks
public record PrintTask(
        Document document,
        List<Wanted> wanted,
        PrintOrder order,
        PrintStyle style,
        String palette,
        PressSettings press) {
    public PrintTask {
        wanted = List.copyOf(wanted);
    }

    /// What kind of paper comes of it.
    public sealed interface Document {
        /// Bench cards, or signs when the format is one of a sign.
        record Cards(CardFormat format, boolean priced) implements Document {}

        /// @param byCount whether each plant of a lot gets one
        record Labels(LabelRun run, boolean byCount) implements Document {}

        record Sheets(SheetFormat format) implements Document {}

        /// What can be had of the plants.
        ///
        /// @param all whether what is sold out stands in it too
        record Availability(SheetFormat format, boolean all) implements Document {}
    }

    /// The same for other plants.
    public PrintTask of(List<Wanted> others) {
        return new PrintTask(document, others, order, style, palette, press);
    }
}
