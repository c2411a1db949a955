package org.benchleaf.app.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.app.service.ComparisonWords;
import org.benchleaf.app.service.OriginalFinder;
import org.benchleaf.app.service.OriginalWords;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.content.Wording;
import org.benchleaf.search.substitute.Kin;
import org.benchleaf.search.substitute.Substitute;
import org.benchleaf.search.substitute.SubstituteAnswer;
import org.benchleaf.search.substitute.SubstituteQuery;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.need.Wish;

/// Substitutes as text for the telephone: what differs first, then what agrees, then what can be had.
final class SubstituteText {
    private final Wording words;
    private final ComparisonWords comparisons;
    private final OriginalWords originals;

    SubstituteText(Wording words) {
        this.words = words;
        this.originals = new OriginalWords(words);
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
        originals.passedOver(answer).ifPresent(line -> {
            out.println();
            out.println(line);
        });
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
        out.println(originals.insteadOf(found));
        originals.takenAs(found, typed).ifPresent(line -> out.println("  " + line));
        out.println("  "
                + originals
                        .notGrown(found, answer)
                        .orElseGet(() -> words.text(
                                "substitute.stock",
                                Map.of("stock", new AnswerText(words).stock(answer.originalStock(), query.now())))));
        originals.work(found, answer.role()).forEach(line -> out.println("  " + line));
        String asked = asked(query, query.now());
        if (!asked.isEmpty()) {
            out.println("  " + words.text("substitute.asked", Map.of("wishes", asked)));
        }
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
