package org.benchleaf.app.web;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.catalog.model.ItemRecord;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.content.Wording;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.name.NamePart;
import org.benchleaf.shared.stock.Availability;

/// The front page: every plant that can be had now, by name. Made anew when the catalog or the day has changed.
final class PlantList {
    private final Benchleaf benchleaf;
    private final Wording wording;
    private volatile Made made = new Made(new CatalogRevision(-1), new YearWeek(2000, 1), Instant.EPOCH, 0, "");

    PlantList(Benchleaf benchleaf, Wording wording) {
        this.benchleaf = benchleaf;
        this.wording = wording;
    }

    /// @param asOf up to when holds that had ended were looked for
    private record Made(CatalogRevision revision, YearWeek week, Instant asOf, int plants, String rows) {}

    private record Line(BotanicalName name, PlantKey key, String common, String sizes) {}

    String page() {
        Made last = made;
        YearWeek week = YearWeek.of(benchleaf.today());
        if (!last.revision().equals(benchleaf.catalog().revision())
                || !last.week().equals(week)
                || !benchleaf.catalog().freedSince(last.asOf()).plants().isEmpty()) {
            last = make(week);
            made = last;
        }
        String shop = MessagePage.escaped(benchleaf.settings().shopName());
        String asOf = MessagePage.escaped(wording.text("stock.as-of", Map.of("when", wording.time(benchleaf.now()))));
        return HEAD.formatted(shop, last.plants(), asOf) + last.rows() + "</ul></main></body></html>\n";
    }

    private Made make(YearWeek week) {
        Map<PlantKey, String> sizes = new HashMap<>();
        Instant asOf = benchleaf.catalog().now();
        CatalogRevision revision = benchleaf.catalog().forEachStock(stock -> {
            String free = sizes(stock, week);
            if (!free.isEmpty()) {
                sizes.put(stock.plant(), free);
            }
        });
        List<Line> lines = new ArrayList<>();
        benchleaf.catalog().forEachPlant(plant -> add(lines, plant, sizes));
        lines.sort((one, other) -> one.name().compareTo(other.name()));
        String rows = lines.stream().map(PlantList::row).collect(Collectors.joining());
        return new Made(revision, week, asOf, lines.size(), rows);
    }

    private void add(List<Line> lines, PlantRecord plant, Map<PlantKey, String> sizes) {
        String free = sizes.get(plant.key());
        if (free != null) {
            lines.add(new Line(
                    plant.name(),
                    plant.key(),
                    plant.commonName(benchleaf.language()).orElse(""),
                    free));
        }
    }

    private static String sizes(PlantStock stock, YearWeek week) {
        return stock.items().stream()
                .filter(item -> stock.availability(item.key(), week) instanceof Availability.InStock)
                .map(ItemRecord::size)
                .map(Object::toString)
                .distinct()
                .collect(Collectors.joining(" · "));
    }

    private static String row(Line line) {
        StringBuilder name = new StringBuilder();
        for (NamePart part : line.name().parts()) {
            String text =
                    MessagePage.escaped(part.type() == NamePart.Type.CULTIVAR ? printed(part.text()) : part.text());
            name.append(part.spaced() ? " " : "")
                    .append(part.type() == NamePart.Type.LATIN ? "<i>" + text + "</i>" : text);
        }
        return "<li><a href=\"/p/%s\">%s</a><small>%s</small><span>%s</span></li>%n"
                .formatted(line.key(), name, MessagePage.escaped(line.common()), MessagePage.escaped(line.sizes()));
    }

    /// A cultivar's quotes as printers set them.
    private static String printed(String cultivar) {
        return "‘" + cultivar.substring(1, cultivar.length() - 1).replace('\'', '’') + "’";
    }

    private static final String HEAD = """
            <!DOCTYPE html>
            <html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
            <title>%1$s: what is here now</title>
            <style>
            :root { color-scheme: light dark; --ink: #23261f; --quiet: #5d6156; --line: #dcdfd5; --paper: #fff; }
            @media (prefers-color-scheme: dark) { :root { --ink: #ecebe4; --quiet: #a9ada0; --line: #3b3f37; --paper: #1b1d19; } }
            body { font: 1rem/1.45 Georgia, serif; color: var(--ink); background: var(--paper); max-width: 44rem; margin: 0 auto; padding: 1.5rem 1rem 3rem; }
            h1 { font-weight: 500; font-size: 1.7rem; margin: 0; } p { color: var(--quiet); margin: .2rem 0 1.2rem; }
            ul { list-style: none; margin: 0; padding: 0; }
            li { border-top: 1px solid var(--line); padding: .55rem 0; display: grid; grid-template-columns: 1fr auto; gap: 0 1rem; }
            a { color: inherit; text-decoration-color: var(--line); text-underline-offset: .2em; }
            small { grid-column: 1; color: var(--quiet); font-size: .85rem; } span { grid-row: 1; grid-column: 2; font: .85rem/1.6 system-ui, sans-serif; color: var(--quiet); }
            </style></head>
            <body><main><h1>%1$s</h1><p>%2$d plants can be had now. %3$s. <a href="/find">Find one for a place</a></p><ul>
            """;
}
