package org.benchleaf.bench.eval;

import java.util.List;
import java.util.Optional;
import org.benchleaf.catalog.model.Attribute;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.shared.color.PlantColor;
import org.benchleaf.shared.measure.LengthRange;
import org.benchleaf.shared.name.BotanicalName;

/// Which cultivars are close sisters, by their names and facts.
final class Sisters {
    private static final List<Attribute<List<PlantColor>>> COLORS =
            List.of(Attributes.FLOWER_COLOR, Attributes.FALL_COLOR, Attributes.FRUIT_COLOR, Attributes.FOLIAGE_COLOR);

    private Sisters() {}

    static boolean areClose(PlantRecord one, PlantRecord other) {
        return !one.key().equals(other.key())
                && isCultivar(one.name())
                && isCultivar(other.name())
                && one.name().genus().equals(other.name().genus())
                && one.name().species().equals(other.name().species())
                && alike(one, other, Attributes.LIFE_FORM)
                && alike(one, other, Attributes.FOLIAGE)
                && alike(one, other, Attributes.HABIT)
                && aboutAsTall(one, other)
                && COLORS.stream().allMatch(color -> shareColor(one, other, color));
    }

    private static boolean isCultivar(BotanicalName name) {
        return name.cultivar().isPresent() || name.tradeDesignation().isPresent();
    }

    private static <T> boolean alike(PlantRecord one, PlantRecord other, Attribute<T> attribute) {
        return one.facts().value(attribute).equals(other.facts().value(attribute));
    }

    private static boolean aboutAsTall(PlantRecord one, PlantRecord other) {
        Optional<LengthRange> first = one.facts().value(Attributes.HEIGHT);
        Optional<LengthRange> second = other.facts().value(Attributes.HEIGHT);
        if (first.isEmpty() || second.isEmpty()) {
            return false;
        }
        double ratio = first.get().middleCm() / second.get().middleCm();
        return ratio < 4 / 3.0 && ratio > 0.75;
    }

    private static boolean shareColor(PlantRecord one, PlantRecord other, Attribute<List<PlantColor>> attribute) {
        List<PlantColor> first = one.facts().value(attribute).orElse(List.of());
        List<PlantColor> second = other.facts().value(attribute).orElse(List.of());
        return first.isEmpty() && second.isEmpty()
                || first.stream()
                        .anyMatch(color -> second.stream().anyMatch(another -> another.family() == color.family()));
    }
}
