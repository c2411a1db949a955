package org.benchleaf.render.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.content.Wording;
import org.benchleaf.render.page.SizeLook;
import org.benchleaf.shared.measure.LengthRange;

/// What the size stand says, in words.
final class SizeWords {
    private SizeWords() {}

    /// @param bare whether it is drawn bare too
    static String alternative(SizeLook size, boolean bare, Wording words) {
        if (size.height().isEmpty()) {
            return words.text("stand.unknown");
        }
        List<String> sentences = new ArrayList<>();
        sentences.add(words.text("stand.mature.alternative", Map.of("size", of(size.height(), size.spread(), words))));
        if (size.heightTenYears().isPresent()) {
            sentences.add(words.text(
                    "stand.ten.alternative", Map.of("size", of(size.heightTenYears(), size.spreadTenYears(), words))));
            if (bare) {
                sentences.add(words.text("stand.ten.bare"));
            }
        }
        if (bare && size.heightTenYears().isEmpty()) {
            sentences.add(words.text("stand.winter.bare"));
        }
        size.habit().ifPresent(habit -> sentences.add(words.text("stand.outline", Map.of("habit", words.term(habit)))));
        sentences.add(words.text(
                "stand.beside",
                Map.of(
                        "person", words.text("stand.person." + words.lengths().name()),
                        "rule", words.text("stand.rule." + words.lengths().name()))));
        return String.join(" ", sentences);
    }

    private static String of(Optional<LengthRange> height, Optional<LengthRange> spread, Wording words) {
        String tall = height.map(range -> words.text("card.height", Map.of("height", words.length(range))))
                .orElse("");
        String wide = spread.map(range -> words.text("card.spread", Map.of("spread", words.length(range))))
                .orElse("");
        return tall.isEmpty() || wide.isEmpty()
                ? tall + wide
                : words.text(
                        "card.size",
                        Map.of("height", words.length(height.get()), "spread", words.length(spread.get())));
    }
}
