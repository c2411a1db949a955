package org.benchleaf.render.view;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.benchleaf.content.Wording;
import org.benchleaf.render.figure.Icons;
import org.benchleaf.render.figure.YearWords;
import org.benchleaf.render.page.BenchCard;
import org.benchleaf.render.pdf.Drawing;
import org.benchleaf.render.pdf.Face;
import org.benchleaf.render.pdf.FigureDrawing;
import org.benchleaf.shared.site.Moisture;
import org.benchleaf.shared.site.WaterNeed;

/// The column of a bench card that tells light, water, winter cold and size, each as an icon with its words; what is
/// not known is left out and the rest spreads.
final class CardIcons {
    /// Side of an icon in mm.
    static final double SIDE = 8.4;

    /// Least room between rows in mm.
    private static final double LEAST_GAP = 1;

    private static final double POINT_MM = 25.4 / 72;

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

    /// @param top of the column in mm from the top of the card
    /// @param height of the column in mm
    /// @param measureMm for words
    /// @param drawings receives the icons
    List<CardIcon> set(
            BenchCard card,
            double top,
            double height,
            double measureMm,
            Map<String, Drawing> drawings,
            String subject) {
        Map<String, String> rows = new LinkedHashMap<>();
        if (!card.exposure().isEmpty()) {
            String text = words.sentence(words.exposure(card.exposure()));
            rows.put("figure:light", text);
            drawings.put("figure:light", new FigureDrawing(Icons.light(card.exposure(), text)));
        }
        waterRow(card, rows, drawings);
        card.hardiness().ifPresent(zones -> {
            String text =
                    words.text("card.zones", Map.of("zones", zones.toString().replace('-', '–')));
            rows.put("figure:winter", text);
            drawings.put("figure:winter", new FigureDrawing(Icons.winter(text)));
        });
        sizeRow(card, rows, drawings);
        Map<String, TextBlock> blocks = new LinkedHashMap<>();
        rows.forEach((figure, text) -> blocks.put(figure, block(text, measureMm, subject)));
        if (card.photo().isPresent()) {
            seasonRow(card, height, measureMm, blocks, drawings, subject);
        }
        List<CardIcon> icons = new ArrayList<>();
        double gap = Math.min((height - heightOf(blocks.values())) / Math.max(1, blocks.size()), 8.6);
        double at = top + (height - heightOf(blocks.values()) - gap * blocks.size()) / 2;
        for (Map.Entry<String, TextBlock> entry : blocks.entrySet()) {
            TextBlock text = entry.getValue();
            double row = rowHeight(text) + gap;
            double middle = at + row / 2;
            icons.add(new CardIcon(
                    entry.getKey(), round(middle - SIDE / 2), round(middle - text.height() / 2), text.lines()));
            at += row;
        }
        return icons;
    }

    private TextBlock block(String text, double measureMm, String subject) {
        return typesetter.set(
                Typesetter.words(text, Face.FACTS), measureMm / POINT_MM, fixed(plan.iconType()), subject, "facts");
    }

    private static double rowHeight(TextBlock text) {
        return Math.max(SIDE, text.height());
    }

    private static double heightOf(Collection<TextBlock> blocks) {
        return blocks.stream().mapToDouble(CardIcons::rowHeight).sum();
    }

    /// Words beside icons are all of one size, on as many lines as it takes.
    private static TypeRange fixed(TypeRange range) {
        return new TypeRange(range.largest(), range.largest(), range.largest(), range.lines() + 1, range.leading());
    }

    private void waterRow(BenchCard card, Map<String, String> rows, Map<String, Drawing> drawings) {
        if (card.waterNeed().isPresent()) {
            WaterNeed need = card.waterNeed().get();
            String text = words.text("card.water." + need.name());
            rows.put("figure:water", text);
            drawings.put("figure:water", new FigureDrawing(Icons.water(need.ordinal() + 1, text)));
        } else if (!card.moisture().isEmpty()) {
            String text = words.sentence(words.text("card.moisture", Map.of("moisture", words.terms(card.moisture()))));
            int wettest =
                    card.moisture().stream().mapToInt(Moisture::ordinal).max().orElse(1);
            rows.put("figure:water", text);
            drawings.put("figure:water", new FigureDrawing(Icons.water(Math.clamp(wettest, 1, 3), text)));
        }
    }

    private void sizeRow(BenchCard card, Map<String, String> rows, Map<String, Drawing> drawings) {
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
        drawings.put("figure:size", new FigureDrawing(Icons.size(text)));
    }

    /// Beside a photograph, when it shows: in the ring's place, where there is room.
    private void seasonRow(
            BenchCard card,
            double height,
            double measureMm,
            Map<String, TextBlock> blocks,
            Map<String, Drawing> drawings,
            String subject) {
        String text = YearWords.seasons(card.year(), words);
        if (text.isEmpty()) {
            return;
        }
        TextBlock season = block(text, measureMm, subject);
        if (heightOf(blocks.values()) + rowHeight(season) + LEAST_GAP * blocks.size() <= height) {
            blocks.put("figure:season", season);
            drawings.put("figure:season", new FigureDrawing(Icons.season(text)));
        }
    }

    private static double round(double mm) {
        return Math.round(mm * 1000) / 1000.0;
    }
}
