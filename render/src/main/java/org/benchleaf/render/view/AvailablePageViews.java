package org.benchleaf.render.view;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.content.Wording;
import org.benchleaf.render.page.AvailabilityPage;
import org.benchleaf.render.page.ItemLine;
import org.benchleaf.shared.stock.Availability;

/// Puts the page of what can be had into words.
public final class AvailablePageViews {
    private final Wording words;

    public AvailablePageViews(Wording words) {
        this.words = words;
    }

    /// The page in words.
    ///
    /// @param summary how many plants, as of when
    /// @param prices whether any is told
    /// @param door where a customer finds more
    public record View(String summary, boolean prices, Optional<Door> door, List<Line> lines) {}

    /// A way to what customers are told.
    public record Door(String path, String words) {}

    /// One plant.
    public record Line(TextLine name, String common, String path, List<Item> items) {}

    /// One size of it.
    public record Item(String size, String ready, String price, boolean here) {}

    public View view(AvailabilityPage page) {
        return new View(
                words.text(
                        "web.available.summary",
                        Map.of(
                                "here", words.count((int) page.here()),
                                "when", words.stockAsOf(page.asOf()))),
                words.telling().prices()
                        && page.lines().stream()
                                .flatMap(line -> line.items().stream())
                                .anyMatch(item -> item.price().isPresent()),
                door(),
                page.lines().stream().map(this::line).toList());
    }

    /// Where customers find their prices: the door while not everything is told, their account once they are known.
    private Optional<Door> door() {
        if (words.telling().tier().isPresent()) {
            return Optional.of(new Door("/staff/me", words.text("web.available.account")));
        }
        return words.telling().isExact() && words.telling().prices()
                ? Optional.empty()
                : Optional.of(new Door("/staff/sign-in", words.text("web.available.sign-in")));
    }

    private Line line(AvailabilityPage.Line line) {
        return new Line(
                Typesetter.line(line.name(), true),
                line.common(),
                "/p/" + line.key(),
                line.items().stream().map(this::item).toList());
    }

    private Item item(ItemLine item) {
        return new Item(
                words.listedSize(item.size(), item.form()),
                words.availability(item.availability()),
                item.price().flatMap(words.telling()::price).map(words::money).orElse(""),
                item.availability() instanceof Availability.InStock);
    }
}
