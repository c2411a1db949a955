package org.benchleaf.render.view;

import java.util.List;
import org.benchleaf.content.Wording;
import org.benchleaf.render.page.PageLink;
import org.benchleaf.render.page.PlantSheet;

/// Product sheets in words for the web, where the reader's own fonts print every character.
public final class WebSheets {
    private WebSheets() {}

    public static SheetView view(PlantSheet sheet, Wording words) {
        return SheetViews.live(words).view(sheet, TextBlock.none(), 0);
    }

    /// Links to other plants' pages: why, the name, the address.
    public static List<SheetView.RelativeLine> links(List<PageLink> links) {
        return links.stream()
                .map(link ->
                        new SheetView.RelativeLine(link.why(), Typesetter.line(link.name(), false), "/p/" + link.key()))
                .toList();
    }
}
