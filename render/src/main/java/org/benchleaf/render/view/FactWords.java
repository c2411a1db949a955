package org.benchleaf.render.view;

import java.util.Comparator;
import java.util.stream.Collectors;
import org.benchleaf.content.Wording;
import org.benchleaf.render.page.FactKind;
import org.benchleaf.render.page.FactValue;
import org.benchleaf.shared.fact.Region;
import org.benchleaf.shared.site.Exposure;

/// Values of facts in words.
final class FactWords {
    private final Wording words;

    FactWords(Wording words) {
        this.words = words;
    }

    String label(FactKind kind) {
        return words.text("fact." + kind.name());
    }

    String value(FactValue value) {
        return switch (value) {
            case FactValue.Terms terms -> terms(terms);
            case FactValue.Length(var range) -> Typesetter.joined(words.length(range));
            case FactValue.Zones(var range) -> dashed(range.toString());
            case FactValue.HeatZones(var range) -> dashed(range.toString());
            case FactValue.Acidity(var range) -> dashed(range.toString());
            case FactValue.Months(var months) -> words.months(months);
            case FactValue.Colors(var colors) -> colors.isEmpty() ? words.text("fact.none") : words.colors(colors);
            case FactValue.Regions(var regions) ->
                regions.stream().map(Region::postalCode).collect(Collectors.joining(words.text("list.comma")));
            case FactValue.Text(String text) -> text;
        };
    }

    private String terms(FactValue.Terms value) {
        var constants = value.terms().stream()
                .map(term -> (Enum<?>) term)
                .sorted(Comparator.comparingInt(Enum::ordinal))
                .toList();
        if (!constants.isEmpty() && constants.stream().allMatch(Exposure.class::isInstance)) {
            return words.exposure(constants.stream().map(Exposure.class::cast).collect(Collectors.toSet()));
        }
        return constants.isEmpty() ? words.text("fact.none") : words.terms(constants);
    }

    private static String dashed(String range) {
        return range.replace('-', '–');
    }
}
