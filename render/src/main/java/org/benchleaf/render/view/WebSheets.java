package org.benchleaf.render.view;

import org.benchleaf.content.Wording;
import org.benchleaf.render.page.PlantSheet;

/// Product sheets in words for the web, where the reader's own fonts print every character.
public final class WebSheets {
    private WebSheets() {}

    public static SheetView view(PlantSheet sheet, Wording words) {
        return new SheetViews(words, (field, text) -> text.strip()).view(sheet, TextBlock.none(), 0);
    }
}
