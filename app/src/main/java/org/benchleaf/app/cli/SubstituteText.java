package org.benchleaf.app.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.benchleaf.app.service.ComparisonWords;
import org.benchleaf.app.service.OriginalFinder;
import org.benchleaf.app.service.ReferencePlants;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.content.Wording;
import org.benchleaf.search.substitute.Kin;
import org.benchleaf.search.substitute.Role;
import org.benchleaf.search.substitute.Substitute;
import org.benchleaf.search.substitute.SubstituteAnswer;
import org.benchleaf.search.substitute.SubstituteQuery;
import org.benchleaf.shared.color.PlantColor;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.plant.Season;

/// Substitutes as text for the telephone: what differs first, then what agrees, then what can be had.
final class SubstituteText {
    private static final int SEASONS = 2;
    private static final int USES = 3;

    private final Wording words;
    private final ComparisonWords comparisons;

    SubstituteText(Wording words) {
        this.words = words;
        this.comparisons = new ComparisonWords(words);
    }

    void write(
            OriginalFinder.Found found, String typed, SubstituteQuery query, SubstituteAnswer answer, PrintWriter out) {
        head(found, typed, query, answer, out);
        int place = 0;
        for (Kin kin : Kin.values()) {
            List<Substitute> group = answer.of(kin);
            if (!group.isEmpty()) {
                out.println();
                out.println(words.text("substitute.group." + kin));
            }
            for (Substitute one : group) {
                place++;
                write(place, one, out);
            }
        }
        if (place == 0) {
            out.println();
            out.println(words.text("substitute.none"));
        }
        if (!answer.passedOver().isEmpty()) {
            out.println();
            out.println(words.text(
                    "substitute.passed-over",
                    Map.of(
                            "names",
                            answer.passedOver().stream()
                                    .map(plant -> plant.name().toString())
                                    .collect(Collectors.joining(", ")))));
        }
        compiledOn(query, answer).ifPresent(line -> {
            out.println();
            out.println(line);
        });
    }

    private Optional<String> compiledOn(SubstituteQuery query, SubstituteAnswer answer) {
        return query.shipment().isEmpty()
                ? Optional.empty()
                : answer.all().stream()
                        .flatMap(one -> one.sale().stream())
                        .findFirst()
                        .map(verdict -> words.saleCaution(verdict.compiledOn()));
    }

    private void head(
            OriginalFinder.Found found, String typed, SubstituteQuery query, SubstituteAnswer answer, PrintWriter out) {
        PlantRecord original = found.plant();
        Map<String, String> names = Map.of(
                "name", original.name().toString(),
                "common", original.commonName(words.language()).orElse(""));
        out.println(words.text(
                original.commonName(words.language()).isPresent()
                        ? "substitute.instead-of.common"
                        : "substitute.instead-of",
                names));
        if (!found.others().isEmpty()) {
            String others = found.others().stream()
                    .map(plant -> plant.name().toString())
                    .collect(Collectors.joining(", "));
            out.println("  "
                    + words.text(
                            "substitute.taken-as",
                            Map.of(
                                    "typed", typed,
                                    "name", original.name().toString(),
                                    "others", others)));
        }
        if (ReferencePlants.isReference(original)) {
            out.println("  " + words.text("substitute.not-grown", Map.of("source", source(original))));
        } else {
            String stock = new AnswerText(words).stock(answer.originalStock(), query.now());
            out.println("  " + words.text("substitute.stock", Map.of("stock", stock)));
        }
        String role = role(answer.role(), original.facts());
        if (!role.isEmpty()) {
            out.println("  " + words.text("substitute.role", Map.of("role", role)));
        }
        if (answer.role().unwelcome()) {
            out.println("  " + words.text("substitute.role.unwelcome"));
        }
        String asked = asked(query, query.now());
        if (!asked.isEmpty()) {
            out.println("  " + words.text("substitute.asked", Map.of("wishes", asked)));
        }
    }

    private static String source(PlantRecord original) {
        return original.facts().all().stream()
                .filter(fact -> !fact.attribute().equals(Attributes.SALE_RULES))
                .map(fact -> fact.source().text())
                .distinct()
                .sorted()
                .collect(Collectors.joining("; "));
    }

    /// What the original does: its use said or usual, and the seasons it is looked at for.
    String role(Role role, Facts facts) {
        List<String> parts = new ArrayList<>();
        role.use()
                .map(List::of)
                .orElseGet(() -> role.uses().stream().sorted().limit(USES).toList())
                .forEach(use -> parts.add(words.text("substitute.role.use", Map.of("use", words.term(use)))));
        role.seasons().stream().limit(SEASONS).forEach(season -> parts.add(season(season, facts)));
        return words.listOf(parts);
    }

    private String season(Season season, Facts facts) {
        Optional<String> color = facts
                .value(
                        switch (season) {
                            case FLOWER -> Attributes.FLOWER_COLOR;
                            case FOLIAGE -> Attributes.FOLIAGE_COLOR;
                            case FALL_COLOR -> Attributes.FALL_COLOR;
                            case FRUIT -> Attributes.FRUIT_COLOR;
                            case STEM -> Attributes.STEM_COLOR;
                        })
                .orElse(List.of())
                .stream()
                .findFirst()
                .map(PlantColor::word);
        return color.isPresent()
                ? words.text("substitute.role.season", Map.of("color", color.get(), "season", words.term(season)))
                : words.text("substitute.role.season.plain", Map.of("season", words.term(season)));
    }

    private String asked(SubstituteQuery query, YearWeek now) {
        List<String> parts = new ArrayList<>();
        if (query.demand().stockedOnly()) {
            parts.add(words.wish(new Wish.InStock(
                    query.demand().count(),
                    query.demand().size(),
                    Optional.of(query.demand().by().orElse(now)))));
        }
        query.wishes().stream().map(WeighedWish::wish).map(words::wish).forEach(parts::add);
        query.shipment().map(Wish.ShipTo::new).map(words::wish).ifPresent(parts::add);
        return String.join("; ", parts);
    }

    private void write(int place, Substitute one, PrintWriter out) {
        PlantRecord plant = one.match().plant();
        String common =
                plant.commonName(words.language()).map(name -> ", " + name).orElse("");
        out.println();
        out.println(String.format("%2d. ", place) + plant.name() + common + "  [" + plant.key() + "]");
        line(out, "substitute.differs", comparisons.differs(one.comparison()));
        line(out, "substitute.agrees", comparisons.agrees(one.comparison()));
        line(out, "substitute.better", comparisons.better(one.comparison()));
        line(out, "substitute.named-by", comparisons.namedBy(one));
        line(out, "substitute.unknown", comparisons.unknown(one.comparison()));
        line(out, "substitute.hazard", String.join("; ", comparisons.hazards(one)));
        comparisons.troubles(one).forEach(trouble -> out.println("    " + trouble));
        comparisons.sale(one).ifPresent(sale -> line(out, "substitute.sale", sale));
        if (comparisons.isHardinessUnknown(one)) {
            out.println("    " + words.text("substitute.hardiness-unknown"));
        }
        out.println("    " + comparisons.offer(one));
    }

    private void line(PrintWriter out, String key, String text) {
        if (!text.isEmpty()) {
            out.println("    " + words.text(key, Map.of("text", text)));
        }
    }
}
