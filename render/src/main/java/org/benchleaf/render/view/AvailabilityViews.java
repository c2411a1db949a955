package org.benchleaf.render.view;

import java.util.List;
import java.util.Map;
import org.benchleaf.content.Wording;
import org.benchleaf.render.page.AvailabilityList;
import org.benchleaf.render.pdf.FontShelf;
import org.benchleaf.render.pdf.PhotoShelf;

/// Sets an availability list.
public final class AvailabilityViews {
    private AvailabilityViews() {}

    /// @param frame of its pages
    /// @param figures receives the drawings
    /// @throws org.benchleaf.render.PrintRefused when a text does not fit or cannot be printed
    public static List<DocumentView> pages(
            AvailabilityList list,
            PageFrame frame,
            Wording words,
            FontShelf shelf,
            PhotoShelf photos,
            Figures figures) {
        DocumentMaker maker = new DocumentMaker(
                words, shelf, photos, frame, list.asOf().getYear(), true, DocumentMaker.TITLE, figures);
        for (AvailabilityList.Group group : list.groups()) {
            maker.plants(
                    group.kind()
                            .map(kind -> words.text("group." + kind.name()))
                            .orElseGet(() -> words.text("group.none")),
                    group.plants());
        }
        return maker.pages(words.text("availability.title"), note(list, words), list.shop());
    }

    private static String note(AvailabilityList list, Wording words) {
        long plants =
                list.groups().stream().mapToLong(group -> group.plants().size()).sum();
        long items = list.groups().stream()
                .flatMap(group -> group.plants().stream())
                .mapToLong(plant -> plant.items().size())
                .sum();
        String asOf = words.stockAsOf(list.asOf());
        return plants == 0
                ? asOf + ". " + words.text("table.none")
                : asOf + ", "
                        + words.text(
                                "availability.count",
                                Map.of("items", words.count(items), "plants", words.count(plants)));
    }
}
