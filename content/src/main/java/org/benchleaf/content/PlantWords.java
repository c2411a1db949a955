package org.benchleaf.content;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.shared.color.PlantColor;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.plant.Caution;
import org.benchleaf.shared.site.Exposure;

/// What is told of a plant: colors, months, light and what can hurt.
final class PlantWords {
    private final Wording words;

    PlantWords(Wording words) {
        this.words = words;
    }

    String color(PlantColor color) {
        String key = color.word().replace(' ', '-');
        Words known = words.words();
        int shade = key.indexOf('-');
        Optional<String> shaded = shade < 0
                ? Optional.empty()
                : known.find("color." + key.substring(shade + 1))
                        .flatMap(plain -> known.find("shade." + key.substring(0, shade))
                                .map(pattern -> known.fill("shade." + key, pattern, Map.of("color", plain))));
        return known.find("color." + key).or(() -> shaded).orElse(color.word());
    }

    String colors(Collection<PlantColor> colors) {
        return colors.stream().map(this::color).collect(Collectors.joining(words.text("list.comma")));
    }

    String months(MonthSet months) {
        return months.equals(MonthSet.ALL)
                ? words.text("months.all")
                : String.join(
                        words.text("list.comma"),
                        months.runs().stream()
                                .map(run -> run.getFirst() == run.getLast()
                                        ? words.text("month." + run.getFirst().name())
                                        : words.text("month." + run.getFirst().name()) + "–"
                                                + words.text(
                                                        "month." + run.getLast().name()))
                                .toList());
    }

    String credit(String who, String license) {
        String credit = Stream.of(who, license)
                .filter(part -> !part.isBlank())
                .collect(Collectors.joining(words.text("list.comma")));
        return credit.isEmpty() ? "" : words.text("photo.credit", Map.of("credit", credit));
    }

    String caution(Caution caution) {
        String whom = words.listOf(caution.whom().stream().map(words::term).toList());
        String what = words.text("caution." + caution.hazard().name(), Map.of("whom", whom));
        return caution.how().isEmpty() ? what : words.text("caution.how", Map.of("what", what, "how", caution.how()));
    }

    String exposure(Set<Exposure> exposure) {
        List<Exposure> steps = exposure.stream().sorted().toList();
        if (steps.size() > 1 && steps.getLast().stepsTo(steps.getFirst()) == steps.size() - 1) {
            return words.text(
                    "exposure.range", Map.of("from", words.term(steps.getFirst()), "to", words.term(steps.getLast())));
        }
        return words.terms(steps);
    }
}
