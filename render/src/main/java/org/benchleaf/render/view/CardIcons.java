package org.benchleaf.render.view;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.benchleaf.content.Wording;
import org.benchleaf.render.PrintRefused;
import org.benchleaf.render.figure.Icons;
import org.benchleaf.render.figure.YearWords;
import org.benchleaf.render.page.BenchCard;
import org.benchleaf.render.pdf.Face;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.site.Moisture;
import org.benchleaf.shared.site.WaterNeed;

/// The column of a bench card that tells light, water, winter cold and size, each as an icon with its words; what is
/// not known is left out and the rest spreads.
final class CardIcons {
    /// Least room between rows in mm.
    private static final double LEAST_GAP = 1;

    private static final double POINT_MM = 25.4 / 72;

    private static final double STEP = 0.5;

    private final CardPlan plan;
    private final Wording words;
    private final Typesetter typesetter;

    CardIcons(CardPlan plan, Wording words, Typesetter typesetter) {
        this.plan = plan;
        this.words = words;
        this.typesetter = typesetter;
    }

    /// Whether there is anything to tell.
    static boolean any(BenchCard card) {
        return !card.exposure().isEmpty()
                || card.waterNeed().isPresent()
                || !card.moisture().isEmpty()
                || card.hardiness().isPresent()
                || card.height().isPresent()
                || card.spread().isPresent();
    }

    /// Icons in their places.
    ///
    /// @param type size of their words in points
    /// @param leading of these
    record Set(double type, double leading, List<CardIcon> icons) {
        /// Nothing to tell.
        static final Set NONE = new Set(0, 0, List.of());
    }

    /// In the largest type in which they fit.
    ///
    /// @param box where they may stand
    /// @param columns side by side at most
    /// @param figures receives the icons
    Set set(BenchCard card, CardBox box, int columns, Figures figures, String subject) {
        TypeRange range = plan.iconType();
        for (double type = range.largest(); ; type -= STEP) {
            try {
                return set(card, box, columns, type, figures, subject);
            } catch (PrintRefused refused) {
                if (type - STEP < range.least()) {
                    throw refused;
                }
                CardViews.curable(refused);
            }
        }
    }

    /// Words beside icons are all of one size, on as many lines as it takes.
    private Set set(BenchCard card, CardBox box, int columns, double type, Figures figures, String subject) {
        Map<String, String> rows = new LinkedHashMap<>();
        lightRow(card, rows, figures);
        waterRow(card, rows, figures);
        card.hardiness().ifPresent(zones -> {
            String text =
                    words.text("card.zones", Map.of("zones", zones.toString().replace('-', '–')));
            rows.put("figure:winter", text);
            figures.put("figure:winter", Icons.winter(text));
        });
        sizeRow(card, rows, figures);
        int across = Math.clamp(rows.size(), 1, columns);
        double gutter = across == 1 ? 0 : plan.furniture(4, 3);
        double column = (box.width() - gutter * (across - 1)) / across;
        double measure = column - plan.iconIndent();
        Map<String, TextBlock> blocks = new LinkedHashMap<>();
        rows.forEach((figure, text) -> blocks.put(figure, block(text, type, measure, subject)));
        if (card.photo().isPresent() && columns == 1) {
            seasonRow(card, box.height(), type, measure, blocks, figures, subject);
        }
        return new Set(
                type,
                type * plan.iconType().leading(),
                place(new ArrayList<>(blocks.entrySet()), box, across, column + gutter, subject));
    }

    /// Spread over the height, none further from the next than looks like one group.
    private List<CardIcon> place(
            List<Map.Entry<String, TextBlock>> blocks, CardBox box, int columns, double step, String subject) {
        List<Double> heights = new ArrayList<>();
        for (int from = 0; from < blocks.size(); from += columns) {
            heights.add(blocks.subList(from, Math.min(blocks.size(), from + columns)).stream()
                    .mapToDouble(entry -> rowHeight(entry.getValue()))
                    .max()
                    .orElse(0));
        }
        double used = heights.stream().mapToDouble(Double::doubleValue).sum();
        double gap = Math.min((box.height() - used) / Math.max(1, heights.size()), plan.icon() * 1.02);
        if (gap < 0) {
            throw new PrintRefused(Problem.of("print.page-overflow", subject).with("name", subject));
        }
        double at = box.top() + (box.height() - used - gap * heights.size()) / 2;
        List<CardIcon> icons = new ArrayList<>();
        for (int row = 0; row < heights.size(); row++) {
            double height = heights.get(row) + gap;
            for (int n = row * columns; n < Math.min(blocks.size(), (row + 1) * columns); n++) {
                TextBlock text = blocks.get(n).getValue();
                double middle = at + height / 2;
                icons.add(new CardIcon(
                        blocks.get(n).getKey(),
                        round(box.left() + n % columns * step),
                        round(middle - plan.icon() / 2),
                        round(middle - text.height() / 2),
                        text.lines()));
            }
            at += height;
        }
        return icons;
    }

    private void lightRow(BenchCard card, Map<String, String> rows, Figures figures) {
        if (!card.exposure().isEmpty()) {
            String text = words.sentence(words.exposure(card.exposure()));
            rows.put("figure:light", text);
            figures.put("figure:light", Icons.light(card.exposure(), text));
        }
    }

    private TextBlock block(String text, double type, double measureMm, String subject) {
        return typesetter.set(
                Typesetter.words(text, Face.FACTS),
                measureMm / POINT_MM,
                new TypeRange(
                        type,
                        type,
                        type,
                        plan.iconType().lines() + 1,
                        plan.iconType().leading()),
                subject,
                "facts");
    }

    private double rowHeight(TextBlock text) {
        return Math.max(plan.icon(), text.height());
    }

    private double heightOf(Collection<TextBlock> blocks) {
        return blocks.stream().mapToDouble(this::rowHeight).sum();
    }

    private void waterRow(BenchCard card, Map<String, String> rows, Figures figures) {
        if (card.waterNeed().isPresent()) {
            WaterNeed need = card.waterNeed().get();
            String text = words.text("card.water." + need.name());
            rows.put("figure:water", text);
            figures.put("figure:water", Icons.water(need.ordinal() + 1, text));
        } else if (!card.moisture().isEmpty()) {
            String text = words.sentence(words.text("card.moisture", Map.of("moisture", words.terms(card.moisture()))));
            int wettest =
                    card.moisture().stream().mapToInt(Moisture::ordinal).max().orElse(1);
            rows.put("figure:water", text);
            figures.put("figure:water", Icons.water(Math.clamp(wettest, 1, 3), text));
        }
    }

    private void sizeRow(BenchCard card, Map<String, String> rows, Figures figures) {
        String tall = card.height().map(words::length).map(Typesetter::joined).orElse("");
        String wide = card.spread().map(words::length).map(Typesetter::joined).orElse("");
        if (tall.isEmpty() && wide.isEmpty()) {
            return;
        }
        String text = wide.isEmpty()
                ? words.text("card.height", Map.of("height", tall))
                : tall.isEmpty()
                        ? words.text("card.spread", Map.of("spread", wide))
                        : words.text("card.size", Map.of("height", tall, "spread", wide));
        rows.put("figure:size", text);
        figures.put("figure:size", Icons.size(text));
    }

    /// Beside a photograph, when it shows: in the ring's place, where there is room.
    private void seasonRow(
            BenchCard card,
            double height,
            double type,
            double measureMm,
            Map<String, TextBlock> blocks,
            Figures figures,
            String subject) {
        String text = YearWords.seasons(card.year(), words);
        if (text.isEmpty()) {
            return;
        }
        TextBlock season = block(text, type, measureMm, subject);
        if (heightOf(blocks.values()) + rowHeight(season) + LEAST_GAP * blocks.size() <= height) {
            blocks.put("figure:season", season);
            figures.put("figure:season", Icons.season(text));
        }
    }

    private static double round(double mm) {
        return Math.round(mm * 1000) / 1000.0;
    }
}
