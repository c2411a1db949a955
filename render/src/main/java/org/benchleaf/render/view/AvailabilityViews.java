package org.benchleaf.render.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.benchleaf.content.Wording;
import org.benchleaf.render.PrintRefused;
import org.benchleaf.render.PrintWatch;
import org.benchleaf.render.page.AvailabilityList;
import org.benchleaf.render.page.PlantItems;
import org.benchleaf.render.pdf.FontShelf;
import org.benchleaf.render.pdf.PhotoShelf;
import org.benchleaf.shared.Problem;

/// Sets an availability list.
public final class AvailabilityViews {
    private AvailabilityViews() {}

    /// @param frame of its pages
    /// @param figures receives the drawings
    /// @param watch may let plants pass that cannot be printed
    /// @throws org.benchleaf.render.PrintRefused when a text does not fit or cannot be printed
    public static List<DocumentView> pages(
            AvailabilityList list,
            PageFrame frame,
            Wording words,
            FontShelf shelf,
            PhotoShelf photos,
            Figures figures,
            PrintWatch watch) {
        DocumentMaker maker = new DocumentMaker(
                words, shelf, photos, frame, list.asOf().getYear(), true, DocumentMaker.TITLE, figures);
        List<PlantItems> listed = new ArrayList<>();
        for (AvailabilityList.Group group : list.groups()) {
            listed.addAll(maker.plants(
                    group.kind()
                            .map(kind -> words.text("group." + kind.name()))
                            .orElseGet(() -> words.text("group.none")),
                    group.plants(),
                    watch));
        }
        if (listed.isEmpty() && !list.groups().isEmpty()) {
            throw new PrintRefused(Problem.of("print.nothing", ""));
        }
        return maker.pages(words.text("availability.title"), note(list, listed, words), list.shop());
    }

    private static String note(AvailabilityList list, List<PlantItems> listed, Wording words) {
        long plants = listed.size();
        long items = listed.stream().mapToLong(plant -> plant.items().size()).sum();
        String asOf = words.stockAsOf(list.asOf());
        return plants == 0
                ? asOf + ". " + words.text("table.none")
                : asOf + ", "
                        + words.text(
                                "availability.count",
                                Map.of("items", words.count(items), "plants", words.count(plants)));
    }
}
